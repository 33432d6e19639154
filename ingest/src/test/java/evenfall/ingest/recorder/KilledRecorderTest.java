package evenfall.ingest.recorder;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Recorders in a process of their own, killed at random moments: {@value #KILLS} times {@value #RECORDERS} recordings. */
class KilledRecorderTest {

    private static final long SEED = 11;
    private static final int KILLS = 6;
    private static final int RECORDERS = 40;
    private static final int MOST_LINES = 5000;

    @TempDir
    private Path folder;

    @Test
    void whatHadComeIsThereAfterAKill() throws Exception {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int k = 0; k < KILLS; k++) {
            Path parent = Files.createDirectory(folder.resolve("kill-" + k));
            long[] told = killAfter(parent, random.nextInt(RECORDERS, MOST_LINES));
            for (int r = 0; r < RECORDERS; r++) {
                check(parent.resolve("raw-" + r), told[r], "kill " + k + ", recorder " + r + ", seed " + SEED);
            }
        }
    }

    private static void check(Path raw, long told, String which) throws IOException {
        byte[] kept = Files.readAllBytes(raw.resolve("port-1.wire"));
        assertThat(Endless.sent(kept.length)).as(which).startsWith(kept);
        assertThat(KeptRecording.beingWritten(raw)).isFalse();
        assertThat(KeptRecording.cutShort(raw)).isTrue();
        if (told > 0) {
            Recording recording = KeptRecording.read(raw, Progress.NONE);
            assertThat(recording.pelvis().stream().size()).as(which).isGreaterThanOrEqualTo((int) told);
            assertThat(recording.pelvis().findings()).anyMatch(finding -> finding.code() == FindingCode.CUT_SHORT);
        }
    }

    /** Runs the recorders until they have said so many lines, and kills them; gives how many samples each said it had. */
    private static long[] killAfter(Path parent, int lines) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx128m",
                "-cp",
                System.getProperty("java.class.path"),
                Endless.class.getName(),
                parent.toString()));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        long[] told = new long[RECORDERS];
        try (BufferedReader said = process.inputReader()) {
            for (int i = 0; i < lines; i++) {
                String[] cells = String.valueOf(said.readLine()).split(" ", -1);
                assertThat(cells).as("what the recorders said").hasSize(2);
                told[Integer.parseInt(cells[0])] = Long.parseLong(cells[1]);
            }
            process.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
        } finally {
            process.destroyForcibly();
        }
        return told;
    }

    /** Records sensors that never stop, and says which recorder has how many samples. */
    static final class Endless {

        private static final int LINES = 10;

        private Endless() {}

        @SuppressWarnings("SystemOut") // the only way to tell the test
        public static void main(String[] args) throws Exception {
            List<FakePort> ports = new ArrayList<>();
            List<WireRecorder> recorders = new ArrayList<>();
            for (int r = 0; r < RECORDERS; r++) {
                Path raw = Files.createDirectory(Path.of(args[0], "raw-" + r));
                ports.add(new FakePort());
                recorders.add(new WireRecorder(raw, List.of(ports.get(r)), Clock.systemUTC()));
            }
            for (int i = 0; ; i++) {
                for (int r = 0; r < RECORDERS; r++) {
                    ports.get(r).send(piece(i));
                    System.out.println(r + " " + recorders.get(r).counts().good());
                }
                Thread.sleep(1);
            }
        }

        /** At least so many bytes of what is sent. */
        static byte[] sent(int bytes) {
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            for (int i = 0; all.size() < bytes; i++) {
                all.writeBytes(piece(i));
            }
            return all.toByteArray();
        }

        private static byte[] piece(int i) {
            return WireRecorderTest.lines(Place.PELVIS, i * LINES * 0.005, LINES);
        }
    }
}
