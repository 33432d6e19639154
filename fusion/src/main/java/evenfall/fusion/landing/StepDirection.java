package evenfall.fusion.landing;

import java.util.Locale;

/** Where the steps after a landing lead, as a whole. */
public enum StepDirection {
    BACK,
    FORWARD,
    LEFT,
    RIGHT;

    /** The word in results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
