package evenfall.report.block;

import evenfall.report.log.SessionDate;
import org.jspecify.annotations.Nullable;

/**
 * The plain median of a session's counted values.
 *
 * @param date the session
 * @param n how many values
 * @param median their median
 * @param low lower end of its 95 % interval, or null with fewer than six values
 * @param high upper end, or null
 * @param atLeast whether so many values were cut off at full scale that the median may be larger
 */
public record SessionMedian(
        SessionDate date,
        int n,
        double median,
        @Nullable Double low,
        @Nullable Double high,
        boolean atLeast) {}
