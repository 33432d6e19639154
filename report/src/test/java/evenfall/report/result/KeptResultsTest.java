package evenfall.report.result;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.form.FormStandard;
import evenfall.report.live.LiveLandings;
import evenfall.report.log.SessionDate;
import evenfall.report.log.SessionFolder;
import evenfall.report.log.TrainingLog;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.Session;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder in place of a file stands for a disk that takes nothing more. */
class KeptResultsTest {

    @TempDir
    private Path folder;

    private final List<String> told = new ArrayList<>();
    private SessionFolder session;

    @BeforeEach
    void begin() throws IOException {
        session = TrainingLog.open(folder).athlete("ada").session(new SessionDate(LocalDate.of(2026, 5, 12), 0));
    }

    @Test
    void resultsOfARecordingThatFindNoRoom_areOneSentence() throws IOException {
        Files.createDirectories(session.resultFile(LoggedSessions.DOCUMENT));

        new KeptResults(session, told::add)
                .store(List.of("pelvis"), InventedSessions.of(3, 4).analysis());

        assertThat(told).singleElement().asString().contains("could not be stored", "will be made again next time");
    }

    @Test
    void whatWasToldThatFindsNoRoom_isOneSentence() throws IOException {
        Files.createDirectories(session.resultFile("live.json"));
        Session whole = InventedSessions.of(3, 4);

        ToldResults.store(session, new LiveLandings(() -> FormStandard.STARTING), whole, told::add);

        assertThat(told)
                .singleElement()
                .asString()
                .startsWith("What was told while 2026-05-12 was recorded could not be");
    }
}
