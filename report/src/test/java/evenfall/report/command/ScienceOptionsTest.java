package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScienceOptionsTest {

    @TempDir
    Path folder;

    private Path table;

    @BeforeEach
    void sixSessions() throws IOException {
        StringBuilder text = new StringBuilder("date,landing,side,peakG\n");
        double[] scatter = {0.1, -0.2, 0.15, -0.1, 0.05, -0.15};
        for (int day = 0; day < 6; day++) {
            for (int landing = 1; landing <= 8; landing++) {
                text.append(String.format(
                        Locale.ROOT,
                        "2026-03-%02d,%d,%s,%.2f%n",
                        day + 2,
                        landing,
                        landing % 2 == 0 ? "left" : "right",
                        6 + scatter[day] + scatter[landing % 6]));
            }
        }
        table = Files.writeString(folder.resolve("table.csv"), text);
    }

    @Test
    void theTable_hasThemOnlyWhenAskedFor() {
        assertThat(run().out()).doesNotContain("scientist").doesNotContain("needed a side");
        assertThat(run("--science").out())
                .contains("For the scientist.")
                .contains("needed a side")
                .contains("Nobody should land more in order to know more.");
        assertThat(run("--difference", "peakG=0.1", "--difference", "peakG=1").out())
                .contains("To tell 1 of peakG: between left and right 2 landings on each foot (there are 24: 0 more)")
                .contains("Between two stretches of training: one session in each.");
        assertThat(run("--difference", "peakG=0.02").out()).containsPattern("training: \\d+ sessions in each");
    }

    @Test
    void theDocument_hasWhatIsNeeded() {
        assertThat(run("--format", "json", "--difference", "peakG=0.1").out())
                .containsPattern("\"needed\" : \\[ \\{\\s+\"measure\" : \"peakG\",\\s+\"difference\" : 0.1");
    }

    @ParameterizedTest
    @CsvSource({
        "peakG, write MEASURE=NUMBER",
        "peakG=x, write MEASURE=NUMBER",
        "peakG=0, a number above 0",
        "peakG=-1, a number above 0",
        "peakG=1e400, write MEASURE=NUMBER",
        "peak=1, knows no measure 'peak'",
        "sigma.peakG=1, knows no measure 'sigma.peakG'"
    })
    void whatCannotBeRead_isRefusedWithASentence(String difference, String words) {
        Ran ran = run("--difference", difference);

        assertThat(ran.status()).isEqualTo(CommandRunner.WRONG_USAGE);
        assertThat(ran.err()).contains(words);
    }

    @Test
    void aPageForACoach_hasNoPlaceForIt() {
        assertThat(run("--format", "html", "--science").status()).isEqualTo(CommandRunner.WRONG_USAGE);
    }

    private Ran run(Object... more) {
        Object[] command = new Object[3 + more.length];
        command[0] = "block";
        command[1] = "--table";
        command[2] = table;
        System.arraycopy(more, 0, command, 3, more.length);
        return Ran.command(command);
    }
}
