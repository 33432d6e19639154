package evenfall.report.result;

import evenfall.ingest.words.Words;
import evenfall.report.json.ToldDocument;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.ToldComparison;
import evenfall.report.log.SessionFolder;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.table.ToldText;
import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;

/** Keeps what was told while a session was recorded beside its results, and says what of it is otherwise by the whole. */
public final class ToldResults {

    /** Beside the results; unlike them it cannot be made again. */
    private static final String DOCUMENT = "live.json";

    private static final Words WORDS = Words.beside(ToldResults.class);

    private ToldResults() {}

    /**
     * Stores what was told.
     *
     * @param tell told, in a sentence, why it could not be stored: a full disk must not keep anybody from the results
     * @param whole the session as all that was recorded tells it
     * @return sentences on what is otherwise than it was told, in order of landings
     */
    public static List<String> store(SessionFolder folder, LiveLandings live, Session whole, Consumer<String> tell) {
        List<SessionLanding> told = live.told();
        ToldComparison comparison = ToldComparison.of(
                told.stream().map(SessionLanding::landing).toList(),
                whole.landings().stream().map(SessionLanding::landing).toList());
        try {
            folder.storeResult(DOCUMENT, ToldDocument.of(told, live.falls(), comparison));
        } catch (IOException e) {
            tell.accept(WORDS.say("told.unstored", folder.date(), String.valueOf(e.getMessage())));
        }
        return ToldText.sentences(comparison);
    }
}
