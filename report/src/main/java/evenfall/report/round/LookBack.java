package evenfall.report.round;

import evenfall.fusion.event.EventKind;
import evenfall.ingest.words.Words;
import evenfall.report.form.Form;
import evenfall.report.log.SessionDate;
import evenfall.report.sentence.SessionSentence;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A session that is looked back on.
 *
 * @param person whose
 * @param date which
 * @param dates all sessions of the athlete, the newest first
 * @param sentence the session in a sentence
 * @param rows its landings and falls, in order
 */
public record LookBack(Person person, SessionDate date, List<SessionDate> dates, String sentence, List<Row> rows) {

    private static final Words WORDS = Words.beside(LookBack.class);

    /**
     * One landing or fall.
     *
     * @param index its index in the session
     * @param mark its mark on the strip
     * @param headline a few words
     * @param second which it was
     * @param reasons what speaks against it
     * @param leftOut why it counts nowhere, or null if it counts
     * @param event all that is known of it
     */
    public record Row(
            int index,
            LandingMark mark,
            String headline,
            String second,
            List<String> reasons,
            @Nullable String leftOut,
            SessionLanding event) {

        public Row {
            reasons = List.copyOf(reasons);
        }

        /** The verdict, or null where not judged. */
        public @Nullable Form form() {
            return mark.form();
        }
    }

    public LookBack {
        dates = List.copyOf(dates);
        rows = List.copyOf(rows);
    }

    static LookBack of(Person person, SessionDate date, List<SessionDate> dates, Session session) {
        List<Row> rows = new ArrayList<>();
        for (SessionLanding event : session.landings()) {
            EventKind kind = event.landing().kind();
            if (kind == EventKind.STEPS) {
                continue;
            }
            boolean fall = kind == EventKind.FALL;
            rows.add(new Row(
                    event.landing().index(),
                    LandingWords.mark(event),
                    fall ? WORDS.say("fall") : LandingWords.headline(event),
                    LandingWords.second(event.landing().index(), event),
                    LandingWords.reasons(event),
                    event.note().leftOut() ? event.note().leaveOut() : null,
                    event));
        }
        return new LookBack(person, date, dates, SessionSentence.of(session), rows);
    }
}
