package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.ingest.recording.Gravity;
import org.jspecify.annotations.Nullable;

/** Finds when the last foot left the ground before a contact, in the motion of a sensor on the trunk. */
public final class TakeoffFinder {

    private static final double LEVEL = 0.5 * Gravity.STANDARD;
    /** From half the body's weight until the last foot is off, s: both hops and step-offs of simulated bodies. */
    private static final double LAG_S = 0.0165;

    private static final double LONGEST_FLIGHT_S = 1.2;

    private TakeoffFinder() {}

    /**
     * The last moment before a contact at which the vertical force fell from the body's weight to nothing.
     *
     * @param contactS s on the sensor's clock
     * @return s on the sensor's clock, or null if it did not
     */
    public static @Nullable Double find(Motion motion, double contactS) {
        int first = motion.indexAt(contactS - LONGEST_FLIGHT_S);
        for (int i = motion.indexAt(contactS - 0.06); i > first; i--) {
            double before = motion.verticalForce(i - 1);
            double now = motion.verticalForce(i);
            if (before < LEVEL || now >= LEVEL) {
                continue;
            }
            double part = (before - LEVEL) / (before - now);
            double crossing = motion.time(i - 1) + part * (motion.time(i) - motion.time(i - 1));
            double after = Math.min(crossing + 0.08, contactS - 0.01);
            if (mean(motion, crossing - 0.1, crossing - 0.01) > 0.8 * Gravity.STANDARD
                    && mean(motion, crossing, after) < 0.45 * Gravity.STANDARD) {
                return Math.min(crossing + LAG_S, contactS);
            }
        }
        return null;
    }

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
