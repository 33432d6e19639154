package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.log.TrainingLog;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs of the system on one log: the second waits for the first and says so. */
class TwoProgramsTest {

    private static final long LONGEST_S = 20;

    @TempDir
    private Path folder;

    @Test
    void theSecondWaits_saysSo_andNothingIsLost() throws IOException, InterruptedException {
        Path log = folder.resolve("log");
        Path held = folder.resolve("held");
        Path free = folder.resolve("free");
        Process first = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Holder.class.getName(),
                        log.toString(),
                        held.toString(),
                        free.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("first.txt").toFile())
                .start();
        try {
            await(held, first);
            Ran[] second = new Ran[1];
            Thread waiting = new Thread(
                    () -> second[0] = Ran.command(
                            "diary", "--log", log, "--athlete", "a", "--date", "2026-03-02", "--note", "second"),
                    "second program");
            waiting.start();
            waiting.join(TimeUnit.SECONDS.toMillis(1));
            assertThat(waiting.isAlive()).as("the second did not wait").isTrue();
            Files.createFile(free);
            waiting.join(TimeUnit.SECONDS.toMillis(LONGEST_S));

            assertThat(first.waitFor(LONGEST_S, TimeUnit.SECONDS)).isTrue();
            assertThat(second[0].status()).isZero();
            assertThat(second[0].err()).contains("Another program is writing").contains("waiting");
            assertThat(Ran.command("diary", "--log", log, "--athlete", "a").out())
                    .contains("first")
                    .contains("second");
        } finally {
            first.destroyForcibly();
        }
    }

    private static void await(Path file, Process program) throws InterruptedException {
        while (!Files.exists(file) && program.isAlive()) {
            Thread.sleep(5);
        }
        assertThat(file).exists();
    }

    /** Holds the athlete's lock from when it makes the file {@code held} until there is a file {@code free}. */
    static final class Holder {

        private Holder() {}

        /** Arguments: the log, the file it makes, the file it waits for. */
        public static void main(String[] args) throws IOException {
            var athlete = TrainingLog.open(Path.of(args[0])).athlete("a");
            athlete.locked(sentence -> {}, () -> {
                Files.createFile(Path.of(args[1]));
                while (!Files.exists(Path.of(args[2]))) {
                    Thread.onSpinWait();
                }
                var day = java.time.LocalDate.of(2026, 3, 2);
                return athlete.diary(day)
                        .add(new evenfall.report.log.DiaryEntry(
                                "now",
                                java.util.Map.of(),
                                java.util.Map.of(),
                                java.util.List.of(),
                                null,
                                null,
                                java.util.Map.of(),
                                null,
                                "first"));
            });
        }
    }
}
