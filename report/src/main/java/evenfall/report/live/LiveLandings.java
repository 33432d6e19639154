package evenfall.report.live;

import evenfall.fusion.analysis.Level;
import evenfall.fusion.analysis.LiveAnalyser;
import evenfall.fusion.analysis.LiveNews;
import evenfall.fusion.analysis.OpeningState;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingMeasurer;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import evenfall.report.form.FormJudge;
import evenfall.report.form.FormStandard;
import evenfall.report.log.LandingNote;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Gives the landings of a recording while it grows, each once and judged. Not safe for use from several threads. */
public final class LiveLandings {

    private final LiveAnalyser analyser = new LiveAnalyser();
    private final Supplier<FormStandard> standard;
    private final List<SessionLanding> told = new ArrayList<>();
    private final List<Double> falls = new ArrayList<>();

    /**
     * A giver of landings.
     *
     * @param standard what form is judged by, as far as it is known yet
     */
    public LiveLandings(Supplier<FormStandard> standard) {
        this.standard = standard;
    }

    /**
     * What the data so far adds.
     *
     * @param landings landings to show, in order
     * @param falls moments of falls, s, in order
     */
    public record News(List<SessionLanding> landings, List<Double> falls) {

        public News {
            landings = List.copyOf(landings);
            falls = List.copyOf(falls);
        }
    }

    /** Takes what came since the last call and gives what is new and settled. */
    public News soFar(Recording recording) {
        return news(analyser.advance(recording));
    }

    /** Takes the whole as the end and gives what is left, settled or not. */
    public News atEnd(Recording recording) {
        return news(analyser.end(recording));
    }

    /** All landings given so far, in order. */
    public List<SessionLanding> told() {
        return List.copyOf(told);
    }

    /** Moments of all falls given so far, s, in order. */
    public List<Double> falls() {
        return List.copyOf(falls);
    }

    /** Whether another jump, step or landing has begun after the last landing given. */
    public boolean goesOn() {
        return analyser.goesOn();
    }

    /** How often the strap of a sensor moved after the first landing, as far as is known. */
    public int strapMoves(Place place) {
        return analyser.strapMoves(place).size();
    }

    /** How a segment stands at its newest sample, or null while too little came. */
    public @Nullable Level level(Place place) {
        return analyser.level(place);
    }

    /** How far the opening routine has come. */
    public OpeningState opening() {
        return analyser.opening();
    }

    private News news(LiveNews news) {
        List<SessionLanding> landings = new ArrayList<>();
        FormJudge judge = new FormJudge(standard.get());
        for (LandingMeasurer.Measured measured : news.landings()) {
            Landing landing = measured.landing();
            landings.add(new SessionLanding(
                    landing,
                    landing.measures() == null ? null : judge.judge(landing.measures()),
                    measured.trace(),
                    LandingNote.NONE));
        }
        told.addAll(landings);
        falls.addAll(news.falls());
        return new News(landings, news.falls());
    }
}
