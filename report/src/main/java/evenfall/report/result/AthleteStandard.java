package evenfall.report.result;

import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.report.form.Baseline;
import evenfall.report.form.Circumstance;
import evenfall.report.form.FormStandard;
import evenfall.report.form.ImpactForHeight;
import evenfall.report.heed.Standing;
import evenfall.report.log.ApprovalEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.LandingNote;
import evenfall.report.log.SessionDate;
import evenfall.report.session.SessionLanding;
import evenfall.report.setting.Settings;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Consumer;

/**
 * Puts together what one athlete is judged by: the coach's settings, the baseline of low, pain-free landings that the coach
 * approved, and how hard the athlete usually lands from a height. All of it is what the log says now, so that every session of
 * a block is judged alike.
 */
final class AthleteStandard {

    private static final Set<LandingFlag> BROKEN =
            Set.of(LandingFlag.GAP, LandingFlag.DEAD_SENSOR, LandingFlag.WRONG_UNIT, LandingFlag.CUT_SHORT);

    private final AthleteFolder athlete;
    private final Settings settings;
    private final SortedMap<LocalDate, List<DiaryEntry>> diary;
    private final List<Baseline.Approved> approved = new ArrayList<>();
    private final List<ImpactForHeight.Impact> impacts = new ArrayList<>();

    /** Where the results of a session come from. */
    interface Analyses {

        /** The results of a session; empty where there are none to be had. */
        Optional<RecordingAnalysis> of(SessionDate date) throws IOException;
    }

    private AthleteStandard(AthleteFolder athlete, Settings settings) throws IOException {
        this.athlete = athlete;
        this.settings = settings;
        // Whoever reads the diary for its own sake says what of it is damaged.
        this.diary = athlete.diary(sentence -> {});
    }

    /** What the athlete is judged by. */
    static FormStandard of(AthleteFolder athlete, Settings settings, Analyses analyses) throws IOException {
        AthleteStandard standard = new AthleteStandard(athlete, settings);
        for (SessionDate date : athlete.sessions()) {
            try {
                Optional<RecordingAnalysis> analysis = analyses.of(date);
                if (analysis.isPresent()) {
                    standard.add(date, analysis.get());
                }
            } catch (IOException | UnusableInputException e) {
                // Whoever asks for that session is told; what is usual is told by the others.
            }
        }
        return new FormStandard(settings, Baseline.of(standard.approved), new ImpactForHeight(standard.impacts));
    }

    private void add(SessionDate date, RecordingAnalysis analysis) throws IOException {
        Consumer<String> silent = sentence -> {};
        Map<Integer, LandingNote> notes = SessionNotes.of(athlete, date, analysis, silent);
        Set<Integer> coachApproved =
                ApprovalEntry.approved(athlete.approvals(date).all(silent));
        boolean painFree = coachApproved.isEmpty() || !Standing.hurtOn(date.day(), diary);
        for (Landing landing : analysis.landings()) {
            Measures measures = landing.measures();
            LandingNote note = notes.getOrDefault(landing.index(), LandingNote.NONE);
            if (measures == null
                    || landing.kind() != EventKind.LANDING
                    || note.leftOut()
                    || landing.flags().stream().anyMatch(BROKEN::contains)) {
                continue;
            }
            Circumstance circumstance = SessionLanding.circumstance(measures, note);
            impacts.add(new ImpactForHeight.Impact(
                    circumstance, measures.impact().peakG(), measures.impact().clipped()));
            Double height = circumstance.heightM();
            if (painFree
                    && coachApproved.contains(landing.index())
                    && height != null
                    && height <= settings.value("low-height")) {
                approved.add(new Baseline.Approved(date.toString(), measures, circumstance));
            }
        }
    }
}
