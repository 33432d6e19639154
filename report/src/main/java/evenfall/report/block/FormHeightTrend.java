package evenfall.report.block;

import evenfall.report.statistics.Interval;
import org.jspecify.annotations.Nullable;

/**
 * How the height up to which form was held moves over the weeks.
 *
 * @param perWeekM metres a week, or null
 * @param interval its 95 % interval, sessions taken for what is drawn, or null
 * @param verdict {@code rising}, {@code falling}, {@code no clear change} or {@code too few}
 * @param chanceAmongAll how often chance alone would give as much, after allowing for all that was looked at in the block
 * @param why why something is null, or null
 */
public record FormHeightTrend(
        @Nullable Double perWeekM,
        @Nullable Interval interval,
        String verdict,
        double chanceAmongAll,
        @Nullable String why) {

    static FormHeightTrend untold(String verdict, String why) {
        return new FormHeightTrend(null, null, verdict, 1, why);
    }

    FormHeightTrend among(double chance) {
        return new FormHeightTrend(perWeekM, interval, verdict, chance, why);
    }
}
