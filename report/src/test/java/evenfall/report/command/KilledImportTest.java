package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program killed at any moment leaves a log whose sessions are whole or not there. */
class KilledImportTest {

    private static final long SEED = 20260302;
    private static final int KILLS = 12;

    /** About as long as one import takes, so that kills fall before, into and after the writing. */
    private static final int LATEST_MS = 1200;

    @TempDir
    private Path folder;

    @Test
    void everySessionIsWholeOrNotThere() throws IOException, InterruptedException {
        Path pelvis = Tables.quiet(folder.resolve("pelvis.csv"));
        Path log = folder.resolve("log");
        SplittableRandom random = new SplittableRandom(SEED);
        for (int day = 1; day <= KILLS; day++) {
            Process program = start(log, day, pelvis);
            boolean ended = program.waitFor(random.nextInt(LATEST_MS), TimeUnit.MILLISECONDS);
            program.destroyForcibly().waitFor();
            assertThat(ended && program.exitValue() != 0)
                    .as("the import failed by itself")
                    .isFalse();
        }

        List<Path> sessions = sessions(log);
        for (Path session : sessions) {
            String date = session.getFileName().toString();
            Ran ran = Ran.command("session", "--log", log, "--athlete", "a", "--date", date, "--format", "json");
            assertThat(ran.status())
                    .as("seed %d, %s: %s", SEED, date, ran.err())
                    .isZero();
            assertThat(session.resolve("raw/pelvis.csv")).hasSameBinaryContentAs(pelvis);
            assertThat(session.resolve("results/landings.json")).isNotEmptyFile();
        }
        Ran next = Ran.command("import", "--log", log, "--athlete", "a", "--date", "2026-04-01", "--pelvis", pelvis);
        assertThat(next.status()).as(next.err()).isZero();
        assertThat(sessions(log)).hasSize(sessions.size() + 1);
    }

    private static Process start(Path log, int day, Path pelvis) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "import",
                        "--log",
                        log.toString(),
                        "--athlete",
                        "a",
                        "--date",
                        String.format(Locale.ROOT, "2026-03-%02d", day),
                        "--pelvis",
                        pelvis.toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static List<Path> sessions(Path log) throws IOException {
        Path folder = log.resolve("a/sessions");
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> names = Files.list(folder)) {
            return names.filter(path -> !path.getFileName().toString().startsWith("."))
                    .toList();
        }
    }
}
