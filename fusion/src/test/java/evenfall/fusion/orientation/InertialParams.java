package evenfall.fusion.orientation;

/**
 * What the low-pass-in-inertial-frame filter is told, free of any sample rate.
 *
 * <p>Source of the method and of all defaults: Laidig and Seel 2023, Information Fusion 91:187, doi
 * 10.1016/j.inffus.2022.10.014. "Sigma" is one standard deviation.
 *
 * @param accelerationTime time constant of the low-pass on specific force, s; longer trusts the gyroscope more
 * @param biasSigmaStart of the gyroscope's bias before anything was measured, rad/s
 * @param biasForgettingTime time in which the bias's sigma grows from 0 to 0.1 deg/s, s; longer holds the bias steadier
 * @param biasLimit the largest bias believed on an axis, rad/s; also no rest above it
 * @param biasSigmaMotion to which the bias converges in motion, rad/s; larger reacts slower
 * @param verticalForgetting weight of the artificial zero for the bias about the vertical, against motion
 * @param biasSigmaRest to which the bias converges at rest, rad/s; larger reacts slower
 * @param restTime how long both sensors must be quiet before it counts as rest, s
 * @param restFilterTime time constant of the low-pass that a quiet signal is compared with, s
 * @param restTurnRate how far the turn rate may lie off its low-pass at rest, rad/s
 * @param restAcceleration how far the specific force may lie off its low-pass at rest, m/s²
 */
public record InertialParams(
        double accelerationTime,
        double biasSigmaStart,
        double biasForgettingTime,
        double biasLimit,
        double biasSigmaMotion,
        double verticalForgetting,
        double biasSigmaRest,
        double restTime,
        double restFilterTime,
        double restTurnRate,
        double restAcceleration) {

    public InertialParams {
        positive("accelerationTime", accelerationTime);
        positive("biasSigmaStart", biasSigmaStart);
        positive("biasForgettingTime", biasForgettingTime);
        positive("biasLimit", biasLimit);
        positive("biasSigmaMotion", biasSigmaMotion);
        positive("verticalForgetting", verticalForgetting);
        positive("biasSigmaRest", biasSigmaRest);
        positive("restTime", restTime);
        positive("restFilterTime", restFilterTime);
        positive("restTurnRate", restTurnRate);
        positive("restAcceleration", restAcceleration);
    }

    /** The published defaults. */
    public static InertialParams published() {
        return new InertialParams(
                3.0,
                Math.toRadians(0.5),
                100.0,
                Math.toRadians(2.0),
                Math.toRadians(0.1),
                1e-4,
                Math.toRadians(0.03),
                1.5,
                0.5,
                Math.toRadians(2.0),
                0.5);
    }

    /** The same with another {@link #accelerationTime}. */
    public InertialParams withAccelerationTime(double seconds) {
        return new InertialParams(
                seconds,
                biasSigmaStart,
                biasForgettingTime,
                biasLimit,
                biasSigmaMotion,
                verticalForgetting,
                biasSigmaRest,
                restTime,
                restFilterTime,
                restTurnRate,
                restAcceleration);
    }

    private static void positive(String name, double value) {
        if (value > 0 && value < Double.POSITIVE_INFINITY) {
            return;
        }
        throw new IllegalArgumentException(name + " must be above 0 and finite, not " + value);
    }
}
