package evenfall.fusion.alignment;

import java.util.Locale;

/** How the rotation between a sensor and its body segment was found. */
public enum MountingMethod {
    /** Stillness for the vertical, forward bends for the left-right axis. */
    BEND,
    /** Stated by the layout file. */
    AXES,
    /** Only the vertical is known; the heading is that of the direction of travel or a guess. */
    GRAVITY_ONLY;

    /** The name in results, such as {@code gravity-only}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
