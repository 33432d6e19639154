package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Out of one log and into another: the same numbers, nothing overwritten, nothing half. */
class ExportedAthleteTest {

    private static final long SEED = 7;

    @TempDir
    private Path folder;

    private Path log = Path.of("");
    private Path other = Path.of("");
    private Path zip = Path.of("");

    @BeforeEach
    void fill() throws IOException {
        log = folder.resolve("log");
        other = folder.resolve("other");
        zip = folder.resolve("one.zip");
        Path pelvis = Tables.quiet(folder.resolve("pelvis.csv"));
        run("import", "--log", log, "--athlete", "a", "--date", "2026-03-02", "--pelvis", pelvis);
        run("import", "--log", log, "--athlete", "a", "--date", "2026-03-05", "--pelvis", pelvis);
        run("note", "--log", log, "--athlete", "a", "--date", "2026-03-09", "--landing", "1", "--side", "left");
        run("diary", "--log", log, "--athlete", "a", "--date", "2026-03-02", "--effort", "6", "--minutes", "70");
        run("athlete", "--log", log, "--athlete", "a", "--name", "Invented", "--consent", "2026-03-01");
        run("export", "--log", log, "--athlete", "a", "--out", zip);
    }

    @Test
    void anExportedAthlete_givesTheSameNumbersElsewhere() {
        Ran imported = run("import", "--log", other, zip);

        assertThat(imported.out()).contains("2 sessions");
        for (Object[] command : new Object[][] {
            {"block", "--format", "json"},
            {"session", "--date", "2026-03-02", "--format", "json"},
            {"diary"},
            {"session"},
            {"athlete"}
        }) {
            assertThat(in(other, command)).isEqualTo(in(log, command));
        }
    }

    /** It may hold somebody who is in no log any more. */
    @Test
    void anArchiveThatIsThere_isNotReplaced() throws IOException {
        byte[] before = Files.readAllBytes(zip);
        Ran again = Ran.command("export", "--log", log, "--athlete", "a", "--out", zip);

        assertThat(again.status()).isEqualTo(2);
        assertThat(again.err()).contains("is there already").contains("another name");
        assertThat(zip).hasBinaryContent(before);
    }

    @Test
    void aMovedLog_givesTheSameNumbers() throws IOException {
        String before = in(log, "block", "--format", "json");
        Files.move(log, other);

        assertThat(in(other, "block", "--format", "json")).isEqualTo(before);
    }

    @Test
    void whatIsThere_isNotOverwritten_butMayComeInUnderAnotherName() {
        Ran again = Ran.command("import", "--log", log, zip);
        Ran renamed = run("import", "--log", log, "--athlete", "b", zip);

        assertThat(again.status()).isEqualTo(3);
        assertThat(again.err()).contains("nothing is overwritten").contains("--athlete");
        assertThat(renamed.out()).contains("b");
        assertThat(Ran.command("athlete", "--log", log).out()).contains("a ").contains("b ");
    }

    @Test
    void anExport_isItsOwnersAlone_andSaysSo() throws IOException {
        Assumptions.assumeTrue(
                folder.getFileSystem().supportedFileAttributeViews().contains("posix"),
                "this file system keeps no owner's permissions");

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(zip)))
                .isEqualTo("rw-------");
        assertThat(run("export", "--log", log, "--athlete", "a", "--out", folder.resolve("two.zip"))
                        .out())
                .contains("only you can read");
    }

    @Test
    void nobodyAndNowhere_areRefused() {
        assertThat(Ran.command("export", "--log", log, "--athlete", "x", "--out", folder.resolve("x.zip"))
                        .status())
                .isEqualTo(2);
        assertThat(Ran.command("export", "--log", log, "--athlete", "a", "--out", log.resolve("a/notes/x.zip"))
                        .status())
                .isEqualTo(2);
        assertThat(Ran.command("import", "--log", log, "--date", "2026-03-02", zip)
                        .status())
                .isEqualTo(2);
        assertThat(log.resolve("x")).doesNotExist();
    }

    /** Cut short, or a byte turned, anywhere: refused in one sentence, and nothing of it is in the log. */
    @Test
    void aDamagedArchive_leavesNothing() throws IOException {
        byte[] whole = Files.readAllBytes(zip);
        SplittableRandom random = new SplittableRandom(SEED);
        int refused = 0;
        for (int i = 0; i < 40; i++) {
            byte[] bytes = whole.clone();
            if (i % 2 == 0) {
                bytes = java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length));
            } else {
                bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            }
            Files.write(zip, bytes);
            Ran ran = Ran.command("import", "--log", other, zip);
            if (ran.status() == 0) {
                // A turned bit that nobody reads, such as one of a time of day.
                assertThat(in(other, "block", "--format", "json")).isEqualTo(in(log, "block", "--format", "json"));
                run("athlete", "--log", other, "--athlete", "a", "--delete", "--yes");
            } else {
                refused++;
                assertThat(ran.status())
                        .as("seed %d, %d: %s", SEED, i, ran.err())
                        .isEqualTo(3);
                assertThat(ran.err().lines()).hasSize(1);
                assertThat(Ran.command("athlete", "--log", other).out()).contains("no athlete");
            }
        }
        assertThat(refused).isGreaterThan(20);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../x/a.json", "/etc/x", "a/../../x", "a\\..\\x", "a/.lock", "c:/x", "a/b:c", "a//x", "x"})
    void anArchiveThatLeadsElsewhere_isRefused(String name) throws IOException {
        Path odd = folder.resolve("odd.zip");
        try (OutputStream out = Files.newOutputStream(odd);
                ZipOutputStream entries = new ZipOutputStream(out)) {
            entries.putNextEntry(new ZipEntry(name));
            entries.write("x".getBytes(StandardCharsets.UTF_8));
            entries.closeEntry();
        }
        Ran ran = Ran.command("import", "--log", other, odd);

        assertThat(ran.status()).as(ran.err()).isEqualTo(3);
        assertThat(folder.resolve("x")).doesNotExist();
        assertThat(Ran.command("athlete", "--log", other).out()).contains("no athlete");
    }

    private static String in(Path log, Object... command) {
        Object[] words = new Object[command.length + 4];
        words[0] = command[0];
        words[1] = "--log";
        words[2] = log;
        words[3] = "--athlete";
        words[4] = "a";
        System.arraycopy(command, 1, words, 5, command.length - 1);
        Ran ran = Ran.command(words);
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.err()).isEmpty();
        return ran.out();
    }

    private static Ran run(Object... command) {
        Ran ran = Ran.command(command);
        assertThat(ran.status()).as(ran.err()).isZero();
        return ran;
    }
}
