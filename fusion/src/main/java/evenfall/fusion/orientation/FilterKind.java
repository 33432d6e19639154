package evenfall.fusion.orientation;

import java.util.Locale;

/** The orientation filters on offer. */
public enum FilterKind {
    /** Error-state filter over tilt, speed and place, smoothed backward; may look ahead. */
    TWO_PASS,
    /** The causal twin of {@link #TWO_PASS}. */
    LIVE,
    /** Gradient descent as published by Madgwick 2010; causal. */
    MADGWICK,
    /** Complementary filter on inclination; causal. */
    COMPLEMENTARY;

    /** The name on the command line, such as {@code two-pass}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
