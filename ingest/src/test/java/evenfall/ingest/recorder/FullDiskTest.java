package evenfall.ingest.recorder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FullDiskTest {

    private static final long SEED = 31;
    private static final int DISKS = 100;
    private static final int SAMPLES = 1000;

    @TempDir
    private Path folder;

    /** The disk runs full at any byte of either file. */
    @Test
    void whatWasWrittenIsReadable() throws Exception {
        SplittableRandom random = new SplittableRandom(SEED);
        byte[] sent = WireRecorderTest.lines(Place.PELVIS, 0, SAMPLES);
        int one = sent.length / SAMPLES;
        for (int k = 0; k < DISKS; k++) {
            Path raw = Files.createDirectory(folder.resolve("raw-" + k));
            FakePort port = new FakePort();
            for (int at = 0; at < sent.length; at += 4096) {
                port.send(Arrays.copyOfRange(sent, at, Math.min(sent.length, at + 4096)));
            }
            int room = random.nextInt(20_000, sent.length);
            try (WireRecorder recorder =
                    new WireRecorder(raw, List.of(port), Clock.systemUTC(), new FillingDisk(room))) {
                assertThat(recorder.awaitEnd(10_000))
                        .as("disk %d, seed %d", k, SEED)
                        .isTrue();
                assertThat(recorder.failure()).get().isInstanceOf(DiskFullException.class);
            }

            byte[] kept = Files.readAllBytes(raw.resolve("port-1.wire"));
            assertThat(sent).startsWith(kept);
            Recording recording = KeptRecording.read(raw, Progress.NONE);
            assertThat(recording.pelvis().stream().size()).isGreaterThanOrEqualTo(kept.length / (one + 2) - 1);
            assertThat(recording.pelvis().findings()).anyMatch(finding -> finding.code() == FindingCode.CUT_SHORT);
        }
    }

    @Test
    void oneSentenceSaysSo() throws Exception {
        FakePort port = new FakePort();
        port.send(WireRecorderTest.lines(Place.PELVIS, 0, SAMPLES));
        try (WireRecorder recorder = new WireRecorder(folder, List.of(port), Clock.systemUTC(), new FillingDisk(500))) {
            assertThat(recorder.awaitEnd(10_000)).isTrue();

            assertThat(recorder.failure().orElseThrow())
                    .hasMessageStartingWith("The disk that holds " + folder + " is full")
                    .hasMessageContaining("what came until now is kept")
                    .hasMessageEndingWith(".");
        }
    }

    @Test
    void otherFailuresAreNotTakenForAFullDisk() {
        IOException other = new IOException("Input/output error");

        assertThat(DiskRoom.explained(folder, other)).isSameAs(other);
    }

    /** A real one, of a megabyte. */
    @Test
    void aRealDiskThatRunsFull() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(
                run("mount", "-t", "tmpfs", "-o", "size=1m", "none", disk.toString()),
                "a small disk of memory may not be mounted by this user on this system");
        try {
            Path raw = Files.createDirectory(disk.resolve("raw"));
            FakePort port = new FakePort();
            byte[] sent = WireRecorderTest.lines(Place.PELVIS, 0, 40_000);
            for (int at = 0; at < sent.length; at += 4096) {
                port.send(Arrays.copyOfRange(sent, at, Math.min(sent.length, at + 4096)));
            }
            try (WireRecorder recorder = new WireRecorder(raw, List.of(port), Clock.systemUTC())) {
                assertThat(recorder.awaitEnd(20_000)).isTrue();
                assertThat(recorder.failure()).get().isInstanceOf(DiskFullException.class);
            }

            Recording recording = KeptRecording.read(raw, Progress.NONE);
            assertThat(recording.pelvis().stream().size()).isGreaterThan(10_000);
            assertThat(recording.pelvis().findings()).anyMatch(finding -> finding.code() == FindingCode.CUT_SHORT);
        } finally {
            run("umount", disk.toString());
        }
    }

    private static boolean run(String... command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
