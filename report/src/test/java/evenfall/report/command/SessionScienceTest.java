package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fixtures.session.SessionFiles;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a scientist may ask of a session beside what a coach is shown; its formulas have tests of their own. */
class SessionScienceTest {

    @TempDir
    private Path folder;

    private Path log = Path.of("");

    @BeforeEach
    void storeSession() throws IOException {
        log = folder.resolve("log");
        SessionFiles files = Tables.oneLanding(folder.resolve("tables"), 4);
        Ran stored = Ran.command(
                "import",
                "--log",
                log,
                "--athlete",
                "invented",
                "--date",
                "2026-03-02",
                "--pelvis",
                files.pelvis(),
                "--upper-back",
                files.upperBack());
        assertThat(stored.status()).as(stored.err()).isZero();
    }

    @Test
    void theTable_hasItOnlyWhenAskedFor() {
        assertThat(session("--date", "2026-03-02").out()).contains("1 landing").doesNotContain("scientist");
        assertThat(session("--date", "2026-03-02", "--science").out())
                .contains("within 5 % of weight after, s")
                .containsPattern("(?m)^1 +.?\\d+ +.?\\d+\\.\\d +\\d\\.\\d\\d +\\d\\.\\d\\d$");
    }

    @Test
    void elsewhere_itIsRefused() {
        assertThat(session("--date", "2026-03-02", "--science", "--format", "json")
                        .status())
                .isEqualTo(2);
        Ran list = session("--science");
        assertThat(list.status()).isEqualTo(2);
        assertThat(list.err()).startsWith("--science is for the table of one session; name it with --date");
    }

    private Ran session(String... more) {
        Object[] words = new Object[5 + more.length];
        System.arraycopy(new Object[] {"session", "--log", log, "--athlete", "invented"}, 0, words, 0, 5);
        System.arraycopy(more, 0, words, 5, more.length);
        return Ran.command(words);
    }
}
