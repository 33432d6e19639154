package evenfall.fusion.alignment;

import java.util.Locale;

/** How the rotation between a sensor and its body segment was found, the surest first. */
public enum MountingMethod {
    /** Stillness for the vertical, forward bends for the left-right axis. */
    BEND,
    /** Stated by the layout file. */
    AXES,
    /** Stillness for the vertical, the trunk's crouch before take-off for the left-right axis. */
    CROUCH,
    /** Stillness for the vertical, the direction of travel at take-off for forward. */
    TAKE_OFF,
    /** Stillness for the vertical, the folding of the body in its landings for the left-right axis. */
    LANDINGS,
    /** Only the vertical is known; the heading is a guess. */
    GRAVITY_ONLY;

    /** The name in results, such as {@code gravity-only}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
