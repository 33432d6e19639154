package evenfall.fusion.landing;

import java.util.Locale;

/** Why a measure of a landing is missing or weaker than usual. The code in results is kebab case. */
public enum LandingFlag {
    /** A pelvis accelerometer sample stood at full scale: peaks are "at least". */
    CLIPPED,
    /** The same of the upper back. */
    CLIPPED_UPPER_BACK,
    /** No quiet stance before take-off: yaw and twist are zeroed at the take-off itself. */
    NO_QUIET_START,
    /** Not at rest within 5 s of contact or before the next take-off. */
    NOT_SETTLED,
    /** A step or hop came before the quiet stance, or there was none: no place over the feet. */
    FEET_MOVED,
    /** No upper-back sensor, or it has no samples here: trunk measures are missing. */
    NO_UPPER_BACK,
    /** Tilt, flexion and lean are against gravity, not against the quiet stance. */
    AGAINST_GRAVITY,
    /** The heading of the mounting is not known: sides are uncertain. */
    HEADING_UNKNOWN,
    /** Samples of either sensor are missing within the landing. */
    GAP,
    /** The strap of a sensor may have moved within the landing: the angles it tells are missing. */
    STRAP_MOVED,
    /** The gyroscope gave nothing here: what needs orientation is missing. */
    DEAD_SENSOR,
    /** A sensor was read in a wrong unit or scale: no figure of the landing can be trusted, and no form is judged. */
    WRONG_UNIT,
    /** The recording ends within the landing: what came after is missing. */
    CUT_SHORT,
    /** No take-off could be told from the signal. */
    NO_TAKEOFF,
    /** Places further apart in time are as low as the lowest one, as far as the sensors can tell. */
    LOWEST_UNSURE,
    /** Some measure that form is judged by is missing. */
    FORM_PARTIAL;

    /** The code in results, such as {@code no-quiet-start}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
