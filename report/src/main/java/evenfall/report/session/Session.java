package evenfall.report.session;

import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.orientation.FilterKind;
import evenfall.report.form.FormJudge;
import evenfall.report.form.FormStandard;
import evenfall.report.form.FormVerdict;
import evenfall.report.heed.Standing;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.LandingNote;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One session as tables and pages see it.
 *
 * @param athlete name or id, or null for files that are in no log
 * @param date {@code YYYY-MM-DD} or {@code YYYY-MM-DD-N}, or null for files that are in no log
 * @param sources the files it was read from, as a person would name them
 * @param analysis what the recording tells
 * @param filter the orientation filter used
 * @param landings all events in order of time
 * @param diary the diary entries of that day
 * @param standard what form was judged by
 * @param standing what stands first wherever the session is shown
 */
public record Session(
        @Nullable String athlete,
        @Nullable String date,
        List<String> sources,
        RecordingAnalysis analysis,
        FilterKind filter,
        List<SessionLanding> landings,
        List<DiaryEntry> diary,
        FormStandard standard,
        Standing standing) {

    /** A session judged by what a coach starts from. */
    public Session(
            @Nullable String athlete,
            @Nullable String date,
            List<String> sources,
            RecordingAnalysis analysis,
            FilterKind filter,
            List<SessionLanding> landings,
            List<DiaryEntry> diary) {
        this(athlete, date, sources, analysis, filter, landings, diary, FormStandard.STARTING, Standing.NONE);
    }

    public Session {
        sources = List.copyOf(sources);
        landings = List.copyOf(landings);
        diary = List.copyOf(diary);
    }

    /** The same session with what stands first. */
    public Session under(Standing first) {
        return new Session(athlete, date, sources, analysis, filter, landings, diary, standard, first);
    }

    /** How many landings there are; steps and falls are none. */
    public int count() {
        return (int) landings.stream()
                .filter(event -> event.landing().kind() == EventKind.LANDING)
                .count();
    }

    /** The same session under another name of the athlete. */
    public Session named(String name) {
        return new Session(name, date, sources, analysis, filter, landings, diary, standard, standing);
    }

    /**
     * Puts a session together: judges each landing and lays the coach's notes beside it. Where a sensor was read in a
     * wrong unit no form is judged, for by small numbers every landing would be held.
     *
     * @param notes notes by {@link Landing#index()}
     * @param approved indices of the landings the coach approved for the athlete's baseline
     * @param standard what form is judged by
     */
    public static Session of(
            @Nullable String athlete,
            @Nullable String date,
            List<String> sources,
            RecordingAnalysis analysis,
            FilterKind filter,
            FormStandard standard,
            Map<Integer, LandingNote> notes,
            Set<Integer> approved,
            List<DiaryEntry> diary) {
        FormJudge judge = new FormJudge(standard);
        List<SessionLanding> landings = new ArrayList<>();
        for (Landing landing : analysis.landings()) {
            LandingNote note = notes.getOrDefault(landing.index(), LandingNote.NONE);
            landings.add(new SessionLanding(
                    landing,
                    verdict(judge, landing, note),
                    analysis.traces().get(landing.index()),
                    note,
                    approved.contains(landing.index())));
        }
        return new Session(athlete, date, sources, analysis, filter, landings, diary, standard, Standing.NONE);
    }

    private static @Nullable FormVerdict verdict(FormJudge judge, Landing landing, LandingNote note) {
        Measures measures = landing.measures();
        if (measures == null) {
            return null;
        }
        return landing.flags().contains(LandingFlag.WRONG_UNIT)
                ? FormVerdict.NONE
                : judge.judge(measures, SessionLanding.circumstance(measures, note));
    }
}
