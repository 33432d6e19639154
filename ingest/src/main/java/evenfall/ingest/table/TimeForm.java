package evenfall.ingest.table;

import org.jspecify.annotations.Nullable;

/**
 * How a file tells time.
 *
 * @param column the column of the time, or -1 when samples are evenly spaced
 * @param unit the unit of the column, or null when there is no column
 * @param secondsPerUnit what one step of the number is, s; 1 for ISO 8601; the sample interval when there is no column
 * @param wrapsAt the count at which the number starts again from 0, or 0 if it does not
 */
record TimeForm(int column, @Nullable Unit unit, double secondsPerUnit, double wrapsAt) {

    static TimeForm evenly(double rateHz) {
        return new TimeForm(-1, null, 1 / rateHz, 0);
    }
}
