package evenfall.fusion.orientation;

import evenfall.fusion.filtering.Biquad;
import evenfall.fusion.filtering.Butterworth;

/**
 * Tells rest: both sensors near their own slow average for long enough (Laidig and Seel 2023, Information Fusion
 * 91:187, doi 10.1016/j.inffus.2022.10.014, with their limits).
 */
final class RestDetector {

    /** How long both must be quiet, s. */
    private static final double LEAST_TIME = 1.5;

    /** Time constant of the slow average, s. */
    private static final double AVERAGE_TIME = 0.5;

    /** How far the turn rate may lie off its average, rad/s. */
    private static final double TURN_RATE = Math.toRadians(2);

    /** How far the specific force may lie off its average, m/s². */
    private static final double FORCE = 0.5;

    /** Largest average turn rate of an axis, rad/s: beyond, it is no bias. */
    private static final double BIAS = Math.toRadians(2);

    private final int restSamples;
    private final LowPassBank averages;

    /** Turn rate, then force. */
    private final double[] slow = new double[6];

    private int quietSamples;

    RestDetector(double rateHz) {
        this.restSamples = samples(LEAST_TIME, rateHz);
        this.averages = new LowPassBank(lowPass(AVERAGE_TIME, rateHz), samples(AVERAGE_TIME, rateHz), 6);
    }

    private static int samples(double seconds, double rateHz) {
        return Math.max(1, (int) Math.ceil(seconds * rateHz - 1e-6));
    }

    /** The low-pass, or at a rate too low for it one that lets everything through. */
    private static Biquad lowPass(double seconds, double rateHz) {
        return Math.sqrt(2) / (2 * Math.PI * seconds) < 0.45 * rateHz
                ? Butterworth.ofTimeConstant(seconds, rateHz)
                : new Biquad(1, 0, 0, 0, 0);
    }

    void step(double ax, double ay, double az, double gx, double gy, double gz) {
        slow[0] = gx;
        slow[1] = gy;
        slow[2] = gz;
        slow[3] = ax;
        slow[4] = ay;
        slow[5] = az;
        averages.filter(slow);
        boolean quiet = square(gx - slow[0]) + square(gy - slow[1]) + square(gz - slow[2]) < TURN_RATE * TURN_RATE
                && square(ax - slow[3]) + square(ay - slow[4]) + square(az - slow[5]) < FORCE * FORCE
                && Math.abs(slow[0]) <= BIAS
                && Math.abs(slow[1]) <= BIAS
                && Math.abs(slow[2]) <= BIAS;
        quietSamples = quiet ? Math.min(quietSamples + 1, restSamples) : 0;
    }

    /** Slow average of the turn rate about one axis, rad/s. */
    double slow(int axis) {
        return slow[axis];
    }

    boolean isResting() {
        return quietSamples >= restSamples;
    }

    void interrupt() {
        quietSamples = 0;
    }

    private static double square(double value) {
        return value * value;
    }
}
