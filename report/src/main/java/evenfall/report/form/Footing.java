package evenfall.report.form;

import evenfall.fusion.landing.Side;
import evenfall.report.measure.Turning;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What a landing was landed on, as far as what is usual depends on it. */
public enum Footing {
    /** One foot: measures that have a side are turned so that + is towards it. */
    ONE_FOOT,
    BOTH_FEET,
    /** Nobody noted it and the sensors do not tell. */
    NOT_KNOWN;

    static Footing of(@Nullable Side side) {
        return side == null ? NOT_KNOWN : side == Side.BOTH ? BOTH_FEET : ONE_FOOT;
    }

    /** A value as it is compared: turned to the landing foot on one foot, else as results have it; undoes itself. */
    static double turned(Turning turning, double value, @Nullable Side side) {
        return side == null || side == Side.BOTH ? value : turning.turned(value, side);
    }

    /** The word in results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
