package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsCommandTest {

    @TempDir
    private Path log;

    @Test
    void nothingSet_allIsWhereACoachStarts() {
        Ran ran = Ran.command("settings", "--log", log);

        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .contains("mean-braking", "5 g", "where a coach starts")
                .doesNotContain(", line ");
        assertThat(log).isEmptyDirectory();
    }

    @Test
    void writtenFile_isItsOwnersAlone_andNeverOverwritten() throws IOException {
        assertThat(Ran.command("settings", "--log", log, "--write").err()).contains("Wrote");
        Path file = log.resolve("limits.txt");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        Files.writeString(file, "trunk-lean = 7\n");

        assertThat(Ran.command("settings", "--log", log, "--write").err()).contains("stays as it is");
        assertThat(file).hasContent("trunk-lean = 7\n");
    }

    @Test
    void athletesFile_goesBeforeTheLogs() throws IOException {
        assertThat(Ran.command("settings", "--log", log, "--athlete", "ada", "--write")
                        .status())
                .isZero();
        Files.writeString(log.resolve("limits.txt"), "trunk-lean = 7\ntwist = 9,5\n");
        Files.writeString(log.resolve("ada").resolve("limits.txt"), "trunk-lean = 5\n");

        assertThat(Ran.command("settings", "--log", log, "--athlete", "ada").out())
                .containsPattern("trunk-lean +5 deg +\\S+ada\\S+, line 1")
                .containsPattern("twist +9.5 deg +\\S+limits.txt, line 2");
        assertThat(Ran.command("settings", "--log", log).out()).containsPattern("trunk-lean +7 deg");
    }

    @Test
    void fileThatCannotBeUnderstood_isUnusableInput() throws IOException {
        Files.writeString(log.resolve("limits.txt"), "lean = 7\n");

        Ran ran = Ran.command("settings", "--log", log);

        assertThat(ran.status()).isEqualTo(CommandRunner.UNUSABLE_INPUT);
        assertThat(ran.err()).contains("limits.txt, line 1: nothing is called 'lean'");
        assertThat(ran.out()).isEmpty();
    }
}
