package evenfall.report.coaching;

import evenfall.fusion.event.EventKind;
import evenfall.ingest.words.Words;
import evenfall.report.form.FormStandard;
import evenfall.report.session.AlikeLandings;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What an athlete should hear after a landing: one sentence about one thing, or nothing.
 *
 * <p>Where enough landings of the athlete on this foot from about this height are known, only what was more than usual is said, whatever
 * the limits; else only what passed a limit of form clearly. Nothing is said of landings that are left out or broken by
 * gaps, of sides that are uncertain, or of measures without a stated error.
 */
public final class LandingRemark {

    /** Passing a limit is clear from so many sigmas on: one measure in 44 would else be said for its error alone. */
    static final double CLEAR_SIGMAS = 2;

    /** What is unusual but below this share of its limit is not worth a word. */
    private static final double WORTH = 0.5;

    private static final Words WORDS = Words.beside(LandingRemark.class);

    private record Candidate(String sentence, boolean pastLimit, double size) {}

    private LandingRemark() {}

    /**
     * The sentence, ended by a full stop; empty where nothing is to be said.
     *
     * @param event the landing
     * @param past earlier landings of this athlete, oldest first, without this one
     * @param standard what form is judged by
     */
    public static Optional<String> of(SessionLanding event, List<SessionLanding> past, FormStandard standard) {
        if (event.landing().kind() != EventKind.LANDING || event.note().leftOut()) {
            return Optional.empty();
        }
        List<SessionLanding> alike = AlikeLandings.of(event, past);
        Candidate best = null;
        for (Aspect aspect : Aspect.values()) {
            Candidate candidate = candidate(aspect, event, alike, standard);
            if (candidate != null && (best == null || outweighs(candidate, best))) {
                best = candidate;
            }
        }
        return best == null ? Optional.empty() : Optional.of(best.sentence());
    }

    /** What a measure's value says in a few words, such as "Leaned right"; empty for a measure of which nothing is said. */
    public static Optional<String> brief(String measure, double value) {
        for (Aspect aspect : Aspect.values()) {
            if (aspect.isOf(measure)) {
                return Optional.of(WORDS.say(aspect.key(value)));
            }
        }
        return Optional.empty();
    }

    private static boolean outweighs(Candidate one, Candidate other) {
        return one.pastLimit() == other.pastLimit() ? one.size() > other.size() : one.pastLimit();
    }

    private static @Nullable Candidate candidate(
            Aspect aspect, SessionLanding event, List<SessionLanding> alike, FormStandard standard) {
        Reading reading = aspect.of(event.landing());
        if (reading == null) {
            return null;
        }
        double size = aspect.size(reading.value());
        double limit = aspect.limit(standard, reading.value(), event.side());
        boolean pastLimit = size > limit + CLEAR_SIGMAS * reading.sigma();
        double excess = (size - limit) / Math.max(limit, 1e-9);
        String what = WORDS.say(aspect.key(reading.value()));
        UsualReach usual = usual(aspect, alike);
        if (usual == null) {
            return pastLimit ? new Candidate(WORDS.say(limit > 0 ? "past.limit" : "plain", what), true, excess) : null;
        }
        double beyond = aspect.beyond(reading.value(), usual.median());
        double reach = usual.reach(reading.sigma(), aspect.floor());
        boolean worth = !Double.isFinite(limit) || size > WORTH * limit;
        boolean larger = size > aspect.size(usual.median());
        boolean sure = size > CLEAR_SIGMAS * reading.sigma();
        if (!worth || !larger || !sure || beyond <= reach) {
            return null;
        }
        String sentence = aspect == Aspect.PEAK ? what : WORDS.say("more.than.usual", what);
        return new Candidate(sentence, pastLimit, pastLimit ? excess : beyond / reach);
    }

    private static @Nullable UsualReach usual(Aspect aspect, List<SessionLanding> alike) {
        List<Reading> readings = new ArrayList<>();
        for (SessionLanding other : alike) {
            Reading reading = aspect.of(other.landing());
            if (reading != null) {
                readings.add(reading);
            }
        }
        return UsualReach.of(readings);
    }
}
