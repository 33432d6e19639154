package evenfall.report.turn;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.live.LiveLandings.News;
import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.TrainingLog;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.SessionLanding;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LandingCapTest {

    @TempDir
    private Path folder;

    @Test
    void theCoachsCap_isToldOnce_whenItIsReached() {
        LandingCap cap = new LandingCap(3);
        List<SessionLanding> landings = InventedSessions.of(5, 1).landings();
        List<String> told = new ArrayList<>();
        for (SessionLanding landing : landings) {
            cap.count(new News(List.of(landing), List.of())).ifPresent(told::add);
            assertThat(told).hasSize(landing.landing().index() < 3 ? 0 : 1);
        }
        assertThat(told.get(0)).contains("cap of 3");
    }

    @Test
    void beforeTheFirstDrop_whatStandsFirstIsSaid() throws IOException {
        AthleteFolder athlete = TrainingLog.open(folder).athlete("a");
        athlete.create();
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        athlete.who().add(new AthleteEntry("then", null, null, null, null, "no drops above 0.5 m"));
        athlete.diary(today).add(pain(2));
        assertThat(said(athlete)).hasSize(2);
        assertThat(said(athlete).get(0)).contains("no drops above 0.5 m");
        assertThat(said(athlete).get(1)).contains("left knee");

        athlete.diary(today).add(pain(0));
        assertThat(said(athlete).get(1)).contains("ended the drops of that day");
    }

    private static List<String> said(AthleteFolder athlete) throws IOException {
        List<String> said = new ArrayList<>();
        BeforeDrops.tell(athlete, said::add);
        return said;
    }

    private static DiaryEntry pain(int size) {
        return new DiaryEntry("then", Map.of(), Map.of("left knee", size), List.of(), null, null, Map.of(), null, null);
    }
}
