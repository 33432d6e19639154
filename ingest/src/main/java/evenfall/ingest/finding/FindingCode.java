package evenfall.ingest.finding;

import java.util.Locale;

/** What a finding is about. The code in results is the name in lower case with hyphens. */
public enum FindingCode {
    GAP,
    LOST_SAMPLES,
    REFUSED_ROWS,
    CLIPPING,
    UNITS,
    STUCK_AXIS,
    DEAD_SENSOR,
    BACKWARD_TIME,
    REPEATED_TIME,
    RATE,
    JITTER,
    GYRO_BIAS,
    GYRO_SENSE,
    SENSORS_SWAPPED,
    UPSIDE_DOWN,
    STRAP_MOVED,
    CLOCK_UNCERTAIN,
    NO_OPENING_ROUTINE,
    NO_UPPER_BACK,
    CUT_SHORT;

    /** The code in results, such as {@code stuck-axis}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
