package evenfall.report.result;

import evenfall.report.json.ToldDocument;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.ToldComparison;
import evenfall.report.log.SessionFolder;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.table.ToldText;
import java.io.IOException;
import java.util.List;

/** Keeps what was told while a session was recorded beside its results, and says what of it is otherwise by the whole. */
public final class ToldResults {

    /** Beside the results; unlike them it cannot be made again. */
    private static final String DOCUMENT = "live.json";

    private ToldResults() {}

    /**
     * Stores what was told.
     *
     * @param whole the session as all that was recorded tells it
     * @return sentences on what is otherwise than it was told, in order of landings
     */
    public static List<String> store(SessionFolder folder, LiveLandings live, Session whole) throws IOException {
        List<SessionLanding> told = live.told();
        ToldComparison comparison = ToldComparison.of(
                told.stream().map(SessionLanding::landing).toList(),
                whole.landings().stream().map(SessionLanding::landing).toList());
        folder.storeResult(DOCUMENT, ToldDocument.of(told, live.falls(), comparison));
        return ToldText.sentences(comparison);
    }
}
