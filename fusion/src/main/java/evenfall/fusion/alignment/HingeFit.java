package evenfall.fusion.alignment;

import evenfall.fusion.posture.Motion;
import evenfall.fusion.rotation.SensorAxes;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;

/**
 * What of a bend's vertical acceleration is not that of a body turning about a hinge below the sensor.
 *
 * <p>A sensor {@code h} above a hinge at rest is accelerated by {@code α × h up + ω × (ω × h up)} (rigid-body kinematics, textbook
 * matter). A quick bend shakes the upper back as much as a squat does; but the bend's shaking is the hinge's, and a squat's, whose
 * hips sink, is not. The one unknown {@code h} follows by least squares.
 */
final class HingeFit {

    /** From the hips to the shoulder blades at most, m; common practice, no source. */
    private static final double LONGEST_M = 0.7;

    /** The turn rate's change is taken over so long either way, s. */
    private static final double REACH_S = 0.02;

    private final Motion motion;
    private final Vector3 upInSensor;
    private final Vector3 gyroBias;
    private final int reach;

    HingeFit(Motion motion, Vector3 upInSensor, Vector3 gyroBias) {
        this.motion = motion;
        this.upInSensor = upInSensor;
        this.gyroBias = gyroBias;
        this.reach = Math.max(1, (int) Math.round(REACH_S * motion.stream().rateHz()));
    }

    /** Root mean square vertical acceleration that no hinge explains from one sample to another, m/s². */
    double roughness(int start, int end) {
        double squares = 0;
        double product = 0;
        double lever = 0;
        for (int i = start; i < end; i++) {
            double off = motion.verticalForce(i) - Gravity.STANDARD;
            double hinge = hinge(i);
            squares += off * off;
            product += off * hinge;
            lever += hinge * hinge;
        }
        double h = lever > 0 ? Math.max(0, Math.min(LONGEST_M, product / lever)) : 0;
        return Math.sqrt(Math.max(0, squares - 2 * h * product + h * h * lever) / (end - start));
    }

    /** Vertical acceleration of a point one metre above the hinge, m/s². */
    private double hinge(int i) {
        int before = Math.max(0, i - reach);
        int after = Math.min(motion.size() - 1, i + reach);
        Vector3 rate = rate(i);
        Vector3 turning = rate(after).minus(rate(before)).times(1 / (motion.time(after) - motion.time(before)));
        Vector3 acceleration = turning.cross(upInSensor).plus(rate.cross(rate.cross(upInSensor)));
        return motion.orientation(i).rotate(acceleration).z();
    }

    private Vector3 rate(int i) {
        return SensorAxes.turnRate(motion.stream(), motion.from() + i).minus(gyroBias);
    }
}
