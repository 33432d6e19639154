package evenfall.fusion.orientation;

import evenfall.fusion.filtering.Biquad;
import evenfall.fusion.filtering.Butterworth;

/**
 * What follows from {@link InertialParams} at one sample rate. Variances in (rad/s)².
 *
 * @param interval nominal sample interval, s
 * @param acceleration low-pass on specific force in the inertial frame
 * @param accelerationStart samples of running mean before that low-pass takes over
 * @param rest low-pass that a quiet signal is compared with
 * @param restStart samples of running mean before that low-pass takes over
 * @param restSamples quiet samples in a row that make a rest
 * @param biasStart variance of the bias at the start, also the most it grows to
 * @param biasGrowth what its variance gains a sample
 * @param motionWeight variance of a measurement of the bias in motion, level axes
 * @param verticalWeight the same for the artificial zero about the vertical
 * @param restWeight variance of a measurement of the bias at rest
 */
record InertialCoefficients(
        double interval,
        Biquad acceleration,
        int accelerationStart,
        Biquad rest,
        int restStart,
        int restSamples,
        double biasStart,
        double biasGrowth,
        double motionWeight,
        double verticalWeight,
        double restWeight) {

    /** The gain of sigma over the forgetting time that its definition names: 0.1 deg/s. */
    private static final double FORGOTTEN_SIGMA = Math.toRadians(0.1);

    static InertialCoefficients of(InertialParams params, double rateHz) {
        double interval = 1 / rateHz;
        double growth = FORGOTTEN_SIGMA * FORGOTTEN_SIGMA * interval / params.biasForgettingTime();
        double motion = params.biasSigmaMotion() * params.biasSigmaMotion();
        return new InertialCoefficients(
                interval,
                lowPass(params.accelerationTime(), rateHz),
                samples(params.accelerationTime(), rateHz),
                lowPass(params.restFilterTime(), rateHz),
                samples(params.restFilterTime(), rateHz),
                samples(params.restTime(), rateHz),
                params.biasSigmaStart() * params.biasSigmaStart(),
                growth,
                weight(motion, growth),
                weight(motion / Math.max(params.verticalForgetting(), 1e-10), growth),
                weight(params.biasSigmaRest() * params.biasSigmaRest(), growth));
    }

    /** The measurement variance with which a Kalman filter of that growth settles at {@code variance}. */
    private static double weight(double variance, double growth) {
        return variance * variance / growth + variance;
    }

    /** The low-pass, or at a rate too low for it one that lets everything through. */
    static Biquad lowPass(double seconds, double rateHz) {
        return Math.sqrt(2) / (2 * Math.PI * seconds) < 0.45 * rateHz
                ? Butterworth.ofTimeConstant(seconds, rateHz)
                : new Biquad(1, 0, 0, 0, 0);
    }

    private static int samples(double seconds, double rateHz) {
        return Math.max(1, (int) Math.ceil(seconds * rateHz - 1e-6));
    }
}
