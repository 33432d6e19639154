package evenfall.report.block;

import evenfall.report.statistics.Interval;
import org.jspecify.annotations.Nullable;

/**
 * Landings on one foot, by side; measures that have a side are turned so that + is towards the landing foot.
 *
 * @param left landings on the left foot
 * @param right landings on the right foot
 * @param difference left less right, at equal height where heights are noted, or null
 * @param interval its 95 % interval, or null
 * @param symmetryIndexPercent the difference as a share of the mean of both, for strictly positive quantities, else null
 * @param verdict {@code left greater}, {@code right greater}, {@code no clear difference} or {@code too few}
 * @param neededPerSide landings on each foot that would show such a difference; for the scientist's table only
 * @param method how it was found, or null
 * @param why why the difference is null, or null
 */
public record Sides(
        OneSide left,
        OneSide right,
        @Nullable Double difference,
        @Nullable Interval interval,
        @Nullable Double symmetryIndexPercent,
        String verdict,
        @Nullable Integer neededPerSide,
        @Nullable String method,
        @Nullable String why) {

    /** Neither side is told from the other. */
    public static final String NO_CLEAR_DIFFERENCE = "no clear difference";

    /** Sides that cannot be compared, and why. */
    static Sides untold(OneSide left, OneSide right, String verdict, @Nullable String method, String why) {
        return new Sides(left, right, null, null, null, verdict, null, method, why);
    }

    /**
     * Landings on one side.
     *
     * @param n how many have a value
     * @param median their plain median, or null without any
     */
    public record OneSide(int n, @Nullable Double median) {}
}
