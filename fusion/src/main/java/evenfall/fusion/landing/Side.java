package evenfall.fusion.landing;

import java.util.Locale;

/** The foot or feet landed on. */
public enum Side {
    LEFT,
    RIGHT,
    BOTH;

    /** The word in results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
