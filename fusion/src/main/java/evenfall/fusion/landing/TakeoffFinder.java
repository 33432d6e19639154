package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.ingest.recording.Gravity;
import org.jspecify.annotations.Nullable;

/** Finds when the last foot left the ground before a contact, in the motion of a sensor on the trunk. */
public final class TakeoffFinder {

    /** The last fall of the force through half the body's weight is the take-off's, m/s². */
    private static final double LEVEL = 0.5 * Gravity.STANDARD;
    /** From half the body's weight until the last foot is off, s: both hops and step-offs of simulated bodies. */
    static final double LAG_S = 0.0165;

    /** Nobody flies for longer, s: common practice, no source. */
    private static final double LONGEST_FLIGHT_S = 1.2;
    /** The force falls at least so long before contact, s: shorter is the ringing of a strap; common practice, no source. */
    private static final double SHORTEST_FLIGHT_S = 0.06;

    /** The feet carry more than this on average, m/s², */
    private static final double CARRIED = 0.8 * Gravity.STANDARD;
    /** over so long before the fall, s, */
    private static final double CARRIED_S = 0.1;
    /** and less than this, m/s², */
    private static final double FLOWN = 0.45 * Gravity.STANDARD;
    /** over so long after it, s. All four common practice, no source. */
    private static final double FLOWN_S = 0.08;
    /** The fall itself and the rise at contact stay outside both, s. */
    private static final double BESIDE_S = 0.01;

    /** From this to the lower one the force falls in 2 to 5 ms on simulated bodies, in 5 to 16 on people, m/s². */
    private static final double UPPER_LEVEL = 0.65 * Gravity.STANDARD;

    private static final double LOWER_LEVEL = 0.35 * Gravity.STANDARD;
    /** So long it falls where the lag is known, s. */
    private static final double USUAL_FALL_S = 0.005;
    /** Feet that let go more slowly are off later than the lag says by about so much of the difference. */
    private static final double LATER = 0.9;
    /** Looked for about the fall through half the weight, s. */
    private static final double ABOUT_S = 0.1;

    private TakeoffFinder() {}

    /**
     * The last moment before a contact at which the vertical force fell from the body's weight to nothing.
     *
     * @param contactS s on the sensor's clock
     * @return s on the sensor's clock, or null if it did not
     */
    public static @Nullable Double find(Motion motion, double contactS) {
        int first = motion.indexAt(contactS - LONGEST_FLIGHT_S);
        for (int i = motion.indexAt(contactS - SHORTEST_FLIGHT_S); i > first; i--) {
            double before = motion.verticalForce(i - 1);
            double now = motion.verticalForce(i);
            if (before < LEVEL || now >= LEVEL) {
                continue;
            }
            double crossing = motion.passes(i, LEVEL);
            double after = Math.min(crossing + FLOWN_S, contactS - BESIDE_S);
            if (mean(motion, crossing - CARRIED_S, crossing - BESIDE_S) > CARRIED
                    && mean(motion, crossing, after) < FLOWN) {
                return Math.min(crossing + LAG_S, contactS);
            }
        }
        return null;
    }

    /**
     * How far a take-off may be off because the feet let go more slowly than those from which the lag is known, s.
     *
     * @param takeoffS as found
     * @param contactS before which the feet have let go
     */
    static double slownessSigma(Motion motion, double takeoffS, double contactS) {
        double half = takeoffS - LAG_S;
        double lower = Math.min(contactS, nearestFall(motion, LOWER_LEVEL, half, 1));
        return LATER * Math.max(0, lower - nearestFall(motion, UPPER_LEVEL, half, -1) - USUAL_FALL_S);
    }

    /** When the force falls through a level, from a moment on forward (1) or back (-1); that moment if it does not. */
    private static double nearestFall(Motion motion, double level, double fromS, int way) {
        for (int i = Math.max(1, motion.indexAt(fromS) + 1);
                i > 0 && i < motion.size() && Math.abs(motion.time(i) - fromS) < ABOUT_S;
                i += way) {
            if (motion.verticalForce(i - 1) >= level && motion.verticalForce(i) < level) {
                return motion.passes(i, level);
            }
        }
        return fromS;
    }

    /** Mean vertical force over a stretch, m/s². */
    private static double mean(Motion motion, double fromS, double toS) {
        int from = motion.indexAt(fromS);
        int to = Math.max(from, motion.indexAt(toS));
        double sum = 0;
        for (int i = from; i <= to; i++) {
            sum += motion.verticalForce(i);
        }
        return sum / (to - from + 1);
    }
}
