package evenfall.fusion.event;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds heel drops of the opening routine among the descents that are no landings: from standing still the body falls by a
 * few centimetres, hardly rises before, is stopped hard, and stands still again.
 *
 * <p>The limits leave room for the eighteen of the simulated sessions: 0.48 to 0.64 m/s lost, 0.045 to 0.075 s light, brakes
 * of 3.8 to 7.5 m/s², blows of 19 m/s² and more, still again after 0.46 to 0.53 s.
 */
final class HeelDrops {

    /** Least speed lost on the way down. */
    private static final double FALLEN_MS = 0.3;
    /** Least time with little weight on the feet. */
    private static final double LIGHT_S = 0.02;
    /** Least mean of the brake's first half. */
    private static final double BRAKE_MS2 = 3;
    /** Least resultant. */
    private static final double BLOW_MS2 = 15;
    /** Greatest speed upward before: who rises further hops. Common practice, no source. */
    private static final double RISEN_MS = 0.3;
    /** Standing still is no further away, before and after. */
    private static final double REST_S = 1;
    /** Nobody leans otherwise after it than before by more, rad: common practice, no source. */
    private static final double TILT = Math.toRadians(20);
    /** A blow that rings is one heel drop, s. */
    private static final double APART_S = 0.5;

    private HeelDrops() {}

    /** Moments of the heel drops, s, in order. */
    static List<Double> find(List<Descent> descents, List<Verdict> verdicts) {
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < descents.size(); i++) {
            double at = descents.get(i).turn();
            boolean apart = found.isEmpty() || at - found.get(found.size() - 1) > APART_S;
            if (verdicts.get(i) == Verdict.TOO_GENTLE && isHeelDrop(descents.get(i)) && apart) {
                found.add(at);
            }
        }
        return found;
    }

    private static boolean isHeelDrop(Descent d) {
        return d.fallen() >= FALLEN_MS
                && d.light() >= LIGHT_S
                && d.brakeRate() >= BRAKE_MS2
                && d.peakForce() >= BLOW_MS2
                && d.upward() <= RISEN_MS
                && d.restBefore() <= REST_S
                && d.restAfter() <= REST_S
                && d.tilt() <= TILT;
    }
}
