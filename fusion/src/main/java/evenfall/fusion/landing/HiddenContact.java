package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import org.jspecify.annotations.Nullable;

/**
 * A contact that lies in a gap of the pelvis's samples. The speeds on both sides tell how much the ground pushed in the
 * meantime; the force is taken to have risen on a straight line to what it is after the gap, so half that force over
 * that impulse is how long ago it began. Where the impulse is too large for that, the peak lies in the gap as well, and
 * the mean force of a landing stands in.
 *
 * <p>Until contact the force is taken to be what it was before the gap, dying away: a pelvis in flight does not fall freely, for
 * legs reach down and the trunk turns.
 *
 * @param contactS s on the pelvis's clock
 * @param sigmaS one standard deviation of that
 * @param speed downward at contact, m/s
 * @param speedSigma one standard deviation of what it gained in the gap before contact, m/s
 * @param height of the pelvis at contact, m, as the motion counts it after the gap
 */
record HiddenContact(double contactS, double sigmaS, double speed, double speedSigma, double height) {

    /** Mean force while a landing's force rises and passes its peak, m/s² (common practice, no source). */
    private static final double MEAN_FORCE = 3 * Gravity.STANDARD;
    /** Forces do not rise on a straight line: this part of the time since contact may be wrong. */
    private static final double SHAPE_SIGMA = 0.25;
    /** How fast the force rises on simulated feet when it leaves the noise, m/s³, and in which part that may be wrong. */
    private static final double USUAL_RISE = MomentFinder.CONTACT_RISE / MomentFinder.CONTACT_RISE_S;

    private static final double USUAL_RISE_SIGMA = 0.5;
    /** A contact in a gap lies before its end, s. */
    private static final double LEAST_SINCE = 1e-6;
    /** How sure the difference of the speeds on both sides is, m/s. */
    private static final double SPEED_SIGMA = 0.03;
    /** Force in flight is taken over so long before the gap, s, and dies away over so long. */
    private static final double FLIGHT_S = 0.02;

    private static final double FLIGHT_MEMORY_S = 0.1;
    /** More than this, either way, is no flight but the end of the push-off, m/s². */
    private static final double MOST_IN_FLIGHT = 4;
    /** How far that may be off, m/s², and by how much more for each second of gap. */
    private static final double FLIGHT_SIGMA = 0.4;

    private static final double FLIGHT_SIGMA_PER_S = 12;

    /** The contact in the interval of a motion that ends at sample {@code after}. */
    static HiddenContact in(Motion motion, int after) {
        double start = motion.time(after - 1);
        double length = motion.time(after) - start;
        double before = forceInFlight(motion, after - 1);
        double flight = before * Math.exp(-length / FLIGHT_MEMORY_S);
        double flightSigma = FLIGHT_SIGMA + FLIGHT_SIGMA_PER_S * length;
        // The mean of what dies away over the gap.
        double gain = Gravity.STANDARD - (before - flight) * FLIGHT_MEMORY_S / length;
        double fall = -motion.speed(after - 1).z();
        double impulse = fall + gain * length + motion.speed(after).z();
        double force = motion.verticalForce(after) - flight;
        double rising = force > 0 ? 2 * impulse / force : Double.POSITIVE_INFINITY;
        boolean ramp = rising <= length;
        double since = Math.max(LEAST_SINCE, Math.min(length, impulse / MEAN_FORCE));
        double sigma = length / Math.sqrt(12);
        if (ramp) {
            double speeds = Math.hypot(SPEED_SIGMA, flightSigma * length);
            double byImpulse = Math.hypot(SHAPE_SIGMA * rising, 2 * speeds / force);
            double usual = force / USUAL_RISE;
            double share = square(byImpulse) / (square(byImpulse) + square(USUAL_RISE_SIGMA * usual));
            since = Math.max(LEAST_SINCE, Math.min(length, rising + share * (usual - rising)));
            sigma = Math.min(sigma, USUAL_RISE_SIGMA * usual * Math.sqrt(share));
        }
        double speed = fall + gain * (length - since);
        // Twice the integral of that fall less a force that rises on a straight line, or of one that is even.
        double sunk = ramp
                ? speed * since + since * since * (gain / 2 - force / 6)
                : since * (speed - motion.speed(after).z()) / 2;
        return new HiddenContact(
                start + length - since,
                sigma,
                speed,
                flightSigma * (length - since),
                motion.place(after).z() + sunk);
    }

    private static double forceInFlight(Motion motion, int last) {
        double sum = 0;
        int n = 0;
        for (int i = last; i >= 0 && motion.time(last) - motion.time(i) < FLIGHT_S; i--) {
            sum += motion.verticalForce(i);
            n++;
        }
        return Math.max(-MOST_IN_FLIGHT, Math.min(MOST_IN_FLIGHT, sum / n));
    }

    private static double square(double value) {
        return value * value;
    }

    /** The same for a contact that has been found, or null if it does not lie in a gap. */
    static @Nullable HiddenContact at(Motion motion, double contactS) {
        int before = motion.indexAt(contactS);
        return gapLength(motion, contactS) > 0 ? in(motion, before + 1) : null;
    }

    /** Length of the gap that a moment lies in, s; 0 if it lies in none. */
    static double gapLength(Motion motion, double timeS) {
        int i = motion.indexAt(timeS);
        double dt = i + 1 < motion.size() ? motion.time(i + 1) - motion.time(i) : 0;
        return dt > SensorStream.GAP_INTERVALS / motion.stream().rateHz() ? dt : 0;
    }
}
