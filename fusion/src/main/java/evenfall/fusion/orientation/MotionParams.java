package evenfall.fusion.orientation;

/**
 * What the error-state filter is told, free of any sample rate. Each is one standard deviation unless said. They were
 * chosen on development data (see the method page), where the errors lie flat about them.
 *
 * @param blockTime time between two looks at speed and place, s
 * @param start how the filter starts
 * @param gyroscope what a gyroscope gets wrong
 * @param accelerometer what an accelerometer gets wrong
 * @param growth how errors grow from sample to sample
 * @param usual what a body usually does
 * @param rest what a body does at rest
 * @param lost tilt beyond which the filter starts anew, rad
 * @param gapForce how fast speed may change unseen for the length of an impact, m/s²
 */
record MotionParams(
        double blockTime,
        Start start,
        Gyroscope gyroscope,
        Accelerometer accelerometer,
        Growth growth,
        Usual usual,
        Rest rest,
        double lost,
        double gapForce) {

    /** Those in use. */
    static final MotionParams STANDARD = new MotionParams(
            0.1,
            Start.STANDARD,
            Gyroscope.STANDARD,
            Accelerometer.STANDARD,
            Growth.STANDARD,
            Usual.STANDARD,
            Rest.STANDARD,
            1,
            15);

    /**
     * How the filter starts.
     *
     * @param time over which the mean force alone tells the tilt, s
     * @param tilt after that, rad
     * @param speed after that, m/s
     * @param place after that, m
     */
    record Start(double time, double tilt, double speed, double place) {
        static final Start STANDARD = new Start(1, Math.toRadians(5), 0.5, 0.3);
    }

    /**
     * What a gyroscope gets wrong.
     *
     * @param bias at the start, rad/s
     * @param biasDrift what the bias gains in a second, rad/s
     * @param scale error of an axis
     * @param cross share of another axis that an axis reads
     */
    record Gyroscope(double bias, double biasDrift, double scale, double cross) {
        static final Gyroscope STANDARD = new Gyroscope(Math.toRadians(1.2), Math.toRadians(0.007), 0.0105, 0.0075);
    }

    /**
     * What an accelerometer gets wrong.
     *
     * @param offset m/s²
     * @param offsetDrift what the offset gains in a second, m/s²
     * @param scale error of an axis
     */
    record Accelerometer(double offset, double offsetDrift, double scale) {
        static final Accelerometer STANDARD = new Accelerometer(0.04, 5e-4, 0.005);
    }

    /**
     * How errors grow from sample to sample.
     *
     * @param tilt what it gains in a second, rad
     * @param speed what it gains in a second, m/s
     * @param unevenTurn share of the change of the change from sample to sample by which a turn may be off
     * @param unevenForce share of the change from sample to sample by which a gain of speed may be off
     */
    record Growth(double tilt, double speed, double unevenTurn, double unevenForce) {
        static final Growth STANDARD = new Growth(Math.toRadians(0.03), 0.01, 0.3, 0.3);
    }

    /**
     * What a body usually does.
     *
     * @param time over which its usual speed and distance are taken, s
     * @param leastSpeed usual speed of a body that hardly moves, m/s
     * @param leastPlace usual distance from the usual place of such a body, m
     * @param speedTime time over which a speed other than 0 lasts, s
     * @param placeTime time over which a place other than the usual one lasts, s
     */
    record Usual(double time, double leastSpeed, double leastPlace, double speedTime, double placeTime) {
        static final Usual STANDARD = new Usual(8, 0.08, 0.04, 0.7, 2.1);
    }

    /**
     * What a body does at rest.
     *
     * @param speed m/s
     * @param turn turn rate over one second, rad/s
     */
    record Rest(double speed, double turn) {
        static final Rest STANDARD = new Rest(0.01, Math.toRadians(0.1));
    }
}
