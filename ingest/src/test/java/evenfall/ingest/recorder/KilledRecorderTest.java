package evenfall.ingest.recorder;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A recorder in a process of its own, killed at random moments. */
class KilledRecorderTest {

    private static final long SEED = 11;
    private static final int KILLS = 4;

    @TempDir
    private Path folder;

    @Test
    void whatHadComeIsThereAfterAKill() throws Exception {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int k = 0; k < KILLS; k++) {
            Path raw = Files.createDirectory(folder.resolve("raw-" + k));
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Endless.class.getName(),
                            raw.toString())
                    .redirectErrorStream(true)
                    .start();
            try {
                long told = awaitLines(process, random.nextInt(200, 2000));
                process.destroyForcibly().waitFor(10, TimeUnit.SECONDS);

                Recording recording = KeptRecording.read(raw, Progress.NONE);

                assertThat(recording.pelvis().stream().size())
                        .as("kill %d, seed %d", k, SEED)
                        .isGreaterThanOrEqualTo((int) told);
                assertThat(recording.pelvis().findings()).anyMatch(finding -> finding.code() == FindingCode.CUT_SHORT);
                assertThat(KeptRecording.beingWritten(raw)).isFalse();
            } finally {
                process.destroyForcibly();
            }
        }
    }

    /** Reads what the process says until it has recorded so many samples. */
    private static long awaitLines(Process process, long wanted) throws IOException {
        try (var lines = process.inputReader()) {
            long told = 0;
            for (String line = lines.readLine(); line != null && told < wanted; line = lines.readLine()) {
                told = Long.parseLong(line);
            }
            return told;
        }
    }

    /** Records a sensor that never stops, and says how many samples it has. */
    static final class Endless {

        private Endless() {}

        @SuppressWarnings("SystemOut") // the only way to tell the test
        public static void main(String[] args) throws Exception {
            FakePort port = new FakePort();
            WireRecorder recorder = new WireRecorder(Path.of(args[0]), List.of(port), Clock.systemUTC());
            for (int i = 0; ; i++) {
                port.send(WireRecorderTest.lines(Place.PELVIS, i * 0.05, 10));
                System.out.println(recorder.counts().good());
                Thread.sleep(2);
            }
        }
    }
}
