package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fixtures.session.SessionFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a film lies and how its clock runs is kept in the log, and the page and the captions know it from there. */
class FilmNoteTest {

    private static final String DAY = "2026-03-02";

    @TempDir
    private Path folder;

    private Path log = Path.of("");
    private Path film = Path.of("");

    @BeforeEach
    void storeSession() throws IOException {
        log = folder.resolve("log");
        SessionFiles files = Tables.oneLanding(folder.resolve("tables"), 3);
        Ran stored =
                Ran.command("import", "--log", log, "--athlete", "invented", "--date", DAY, "--pelvis", files.pelvis());
        assertThat(stored.status()).as(stored.err()).isZero();
        film = Files.write(folder.resolve("a film & more.mp4"), new byte[] {1, 2, 3});
    }

    @Test
    void filmAndClock_areKept_andStandOnThePage() {
        Ran noted = note("--film", film, "--film-starts", "-12.34", "--film-drift", "50");
        String page = page();

        assertThat(noted.status()).as(noted.err()).isZero();
        assertThat(page)
                .contains("data-starts=\"-12.340\"", "data-drift=\"50.0\"", "data-name=\"a film &amp; more.mp4\"")
                .contains("a%20film%20&amp;%20more.mp4");
        assertThat(page).contains("Open a film &amp; more.mp4");
        assertThat(page).contains(">heel drop 1, ", ">heel drop 2, ", ">contact of landing 1, ");
    }

    @Test
    void theLastFilm_holds() {
        note("--film", film, "--film-starts", "1");
        note("--film", film, "--film-starts", "2.5");

        assertThat(page()).contains("data-starts=\"2.500\"", "data-drift=\"0.0\"");
        assertThat(log.resolve("invented/films/" + DAY)).isDirectoryContaining("glob:**0002.json");
    }

    @Test
    void captions_beginWithTheNotedFilm() {
        note("--film", film, "--film-starts", "1");

        String first = captions();
        note("--film", film, "--film-starts", "2");
        String later = captions();

        assertThat(first).startsWith("WEBVTT").contains("Landing 1");
        assertThat(seconds(first) - seconds(later)).isCloseTo(1, within(0.002));
    }

    @Test
    void whatMakesNoSense_isRefusedInOneSentence_andNothingIsKept() {
        refused("--film-starts", "--film", film);
        refused("whole path", "--film", folder.resolve("none.mp4"), "--film-starts", "1");
        refused("--film PATH", "--film-starts", "1", "--landing", "1");
        refused("stands alone", "--film", film, "--film-starts", "1", "--landing", "1");
        refused("no drift", "--film", film, "--film-starts", "1", "--film-drift", "NaN");
        refused("--film-starts", "--film", film, "--film-starts", "NaN");
        assertThat(log.resolve("invented/films"))
                .satisfiesAnyOf(
                        films -> assertThat(films).doesNotExist(),
                        films -> assertThat(films).isEmptyDirectory());
    }

    private String captions() {
        return Ran.command("session", "--log", log, "--athlete", "invented", "--date", DAY, "--format", "vtt")
                .out();
    }

    private static double seconds(String captions) {
        return Double.parseDouble(captions.replaceFirst("(?s).*?00:00:(\\d\\d\\.\\d{3}) -->.*", "$1"));
    }

    private void refused(String saying, Object... given) {
        Ran ran = note(given);
        assertThat(ran.status()).isNotZero();
        assertThat(ran.err().strip().lines()).hasSize(1).allMatch(line -> line.contains(saying));
    }

    private Ran note(Object... given) {
        List<Object> words = new ArrayList<>(List.of("note", "--log", log, "--athlete", "invented", "--date", DAY));
        words.addAll(List.of(given));
        return Ran.command(words.toArray());
    }

    private String page() {
        return Ran.command("session", "--log", log, "--athlete", "invented", "--date", DAY, "--format", "html")
                .out();
    }
}
