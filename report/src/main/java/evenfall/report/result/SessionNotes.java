package evenfall.report.result;

import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.landing.Landing;
import evenfall.ingest.words.Words;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.LandingNote;
import evenfall.report.log.Notes;
import evenfall.report.log.PlanEntry;
import evenfall.report.log.Plans;
import evenfall.report.log.SessionDate;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

/** What is known of each landing of a session: what was said before it came, and what was noted of it over that. */
final class SessionNotes {

    private static final Words WORDS = Words.beside(SessionNotes.class);

    private SessionNotes() {}

    /**
     * The note of each landing, by index, for those that have one.
     *
     * @param tell told in a sentence of notes that belong to no landing, and of files passed over
     */
    static Map<Integer, LandingNote> of(
            AthleteFolder athlete, SessionDate date, RecordingAnalysis analysis, Consumer<String> tell)
            throws IOException {
        Map<Integer, LandingNote> entered = Notes.of(athlete.notes(date).all(tell));
        for (Integer landing : entered.keySet()) {
            if (landing > analysis.landings().size()) {
                tell.accept(WORDS.say(
                        "notes.beyond", landing, date, analysis.landings().size()));
                break;
            }
        }
        Map<Integer, LandingNote> notes = planned(athlete, date, analysis, tell);
        entered.forEach((landing, note) -> notes.merge(landing, note, LandingNote::with));
        return notes;
    }

    private static Map<Integer, LandingNote> planned(
            AthleteFolder athlete, SessionDate date, RecordingAnalysis analysis, Consumer<String> tell)
            throws IOException {
        Map<Integer, LandingNote> notes = new TreeMap<>();
        List<PlanEntry> plans = athlete.plans(date).all(tell);
        if (!plans.isEmpty()) {
            for (Landing landing : analysis.landings()) {
                notes.put(landing.index(), Plans.at(plans, landing.moments().contactS()));
            }
        }
        return notes;
    }
}
