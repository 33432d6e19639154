package evenfall.fusion.event;

import java.util.Locale;

/** What a found event is. Only {@link #LANDING} carries measures. */
public enum EventKind {
    LANDING,
    /** A run of running or hopping contacts. */
    STEPS,
    /** Ends off the feet. */
    FALL;

    /** The name in results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
