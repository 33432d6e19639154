package evenfall.report.block;

import evenfall.report.statistics.Interval;
import org.jspecify.annotations.Nullable;

/**
 * Two-footed landings of a measure that has a side, with the signs results have.
 *
 * @param n how many have a value
 * @param median their median, or null without any
 * @param interval its 95 % interval, from how session medians scatter, or null
 * @param verdict {@code to the left}, {@code to the right}, {@code even} or {@code too few}
 * @param why why the interval is null, or null
 */
public record BothFeet(
        int n,
        @Nullable Double median,
        @Nullable Interval interval,
        String verdict,
        @Nullable String why) {

    /** To neither side. */
    public static final String EVEN = "even";
}
