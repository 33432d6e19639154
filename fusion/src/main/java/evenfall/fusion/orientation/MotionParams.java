package evenfall.fusion.orientation;

/**
 * What the error-state filter is told, free of any sample rate. Each is one standard deviation unless said. They were
 * chosen on development data (see the method page), where the errors lie flat about them.
 *
 * @param blockTime time between two looks at speed and place, s
 * @param startTime time over which the mean force alone tells the tilt at the start, s
 * @param tiltStart tilt after that, rad
 * @param speedStart speed after that, m/s
 * @param placeStart place after that, m
 * @param biasStart bias of the gyroscope at the start, rad/s
 * @param biasDrift what the bias gains in a second, rad/s
 * @param gyroScale scale error of a gyroscope axis
 * @param gyroCross share of another axis that a gyroscope axis reads
 * @param offsetStart offset of the accelerometer, m/s²
 * @param offsetDrift what the offset gains in a second, m/s²
 * @param forceScale scale error of an accelerometer axis
 * @param turnNoise what the tilt gains in a second, rad
 * @param speedNoise what the speed gains in a second, m/s
 * @param unevenTurn share of the change of the change from sample to sample by which a turn may be off
 * @param unevenForce share of the change from sample to sample by which a gain of speed may be off
 * @param speedTime time over which a speed other than 0 lasts, s
 * @param placeTime time over which a place other than the usual one lasts, s
 * @param leastSpeed usual speed of a body that hardly moves, m/s
 * @param leastPlace usual distance from the usual place of such a body, m
 * @param usualTime time over which a body's usual speed and distance are taken, s
 * @param restSpeed speed at rest, m/s
 * @param restTurn turn rate at rest, over one second, rad/s
 * @param lost tilt beyond which the filter starts anew, rad
 * @param gapForce how fast speed may change unseen for the length of an impact, m/s²
 */
record MotionParams(
        double blockTime,
        double startTime,
        double tiltStart,
        double speedStart,
        double placeStart,
        double biasStart,
        double biasDrift,
        double gyroScale,
        double gyroCross,
        double offsetStart,
        double offsetDrift,
        double forceScale,
        double turnNoise,
        double speedNoise,
        double unevenTurn,
        double unevenForce,
        double speedTime,
        double placeTime,
        double leastSpeed,
        double leastPlace,
        double usualTime,
        double restSpeed,
        double restTurn,
        double lost,
        double gapForce) {

    static MotionParams standard() {
        return new MotionParams(
                0.1,
                1,
                Math.toRadians(5),
                0.5,
                0.3,
                Math.toRadians(1.2),
                Math.toRadians(0.007),
                0.0105,
                0.0075,
                0.04,
                5e-4,
                0.005,
                Math.toRadians(0.03),
                0.01,
                0.3,
                0.3,
                0.7,
                2.1,
                0.08,
                0.04,
                8,
                0.01,
                Math.toRadians(0.1),
                1,
                15);
    }
}
