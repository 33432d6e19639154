package evenfall.fusion.orientation;

/** Which part of a sample stood at its sensor's full scale and tells less than it seems. */
public enum SampleTrust {
    /** Nothing clipped. */
    FULL,
    /** An accelerometer axis at full scale. */
    ACCELERATION_CLIPPED,
    /** A gyroscope axis at full scale. */
    TURN_RATE_CLIPPED,
    /** Both. */
    BOTH_CLIPPED;

    /** By what clipped. */
    public static SampleTrust of(boolean accelerationClipped, boolean turnRateClipped) {
        if (turnRateClipped) {
            return accelerationClipped ? BOTH_CLIPPED : TURN_RATE_CLIPPED;
        }
        return accelerationClipped ? ACCELERATION_CLIPPED : FULL;
    }

    boolean accelerationClipped() {
        return this == ACCELERATION_CLIPPED || this == BOTH_CLIPPED;
    }

    boolean turnRateClipped() {
        return this == TURN_RATE_CLIPPED || this == BOTH_CLIPPED;
    }
}
