package evenfall.report.turn;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.log.AthleteFolder;
import evenfall.report.log.SessionDate;
import evenfall.report.log.SessionFolder;
import evenfall.report.log.TrainingLog;
import evenfall.report.result.LoggedDiary;
import evenfall.report.result.LoggedSessions;
import evenfall.report.session.InventedSessions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page that lies there as a recording ends. That a recording makes one is held by the tests of {@code record}. */
final class KeptPageTest {

    @TempDir
    Path folder;

    private final List<String> told = new ArrayList<>();
    private AthleteFolder athlete;
    private SessionFolder session;

    @BeforeEach
    void begin() throws IOException {
        athlete = TrainingLog.open(folder).athlete("ada");
        session = athlete.session(new SessionDate(LocalDate.of(2026, 5, 12), 0));
    }

    @Test
    void page_saysOfWhichMomentItIs_andWhereItLies() throws IOException {
        assertThat(KeptPage.write(
                        athlete, session, InventedSessions.of(3, 4), new LoggedDiary(athlete, told::add), told::add))
                .hasValue("Its page: " + session.resultFile(LoggedSessions.PAGE));

        assertThat(session.resultFile(LoggedSessions.PAGE))
                .content()
                .startsWith("<!DOCTYPE html>")
                .contains("This page was kept at the end of the session (")
                .contains("</html>");
        assertThat(told).isEmpty();
    }

    /** A folder in its place stands for a disk that takes nothing more: the results must reach the coach all the same. */
    @Test
    void pageThatCannotBeWritten_isOneSentence() throws IOException {
        Files.createDirectories(session.resultFile(LoggedSessions.PAGE));

        assertThat(KeptPage.write(
                        athlete, session, InventedSessions.of(3, 4), new LoggedDiary(athlete, told::add), told::add))
                .isEmpty();

        assertThat(told)
                .singleElement()
                .asString()
                .startsWith("The page could not be kept (")
                .contains("--format html");
    }
}
