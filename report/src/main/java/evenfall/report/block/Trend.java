package evenfall.report.block;

import org.jspecify.annotations.Nullable;

/**
 * How a measure moves over the weeks.
 *
 * @param perWeek median of the slopes between any two session medians, per week, or null
 * @param low lower end of its 95 % interval, or null
 * @param high upper end, or null
 * @param verdict {@code rising}, {@code falling}, {@code no clear change} or {@code too few}
 * @param method how it was found, or null
 * @param why why something is null, or null
 */
public record Trend(
        @Nullable Double perWeek,
        @Nullable Double low,
        @Nullable Double high,
        String verdict,
        @Nullable String method,
        @Nullable String why) {

    public static final String RISING = "rising";

    public static final String FALLING = "falling";

    /** Fewer sessions than a trend needs. */
    public static final String TOO_FEW = "too few";

    /** Nothing that scatter would not explain. */
    public static final String NO_CLEAR_CHANGE = "no clear change";

    /** The same without a verdict. */
    Trend notTold(String reason) {
        return new Trend(perWeek, low, high, NO_CLEAR_CHANGE, method, reason);
    }
}
