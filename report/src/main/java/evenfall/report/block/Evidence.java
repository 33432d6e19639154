package evenfall.report.block;

import evenfall.report.log.SessionDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the verdicts on a measure were taken from: enough for a scientist to find them again.
 *
 * @param dates the sessions that have a value
 * @param medians of each of them, at equal height and foot where heights are noted
 * @param withinDay how alike landings of one day are, or null where that cannot be told
 * @param feet left against right by session, or null where sides are not compared
 * @param positive whether the measure is a quantity that cannot be nothing or less, so that a percentage of it means something
 */
public record Evidence(
        List<SessionDate> dates,
        List<Double> medians,
        @Nullable WithinDay withinDay,
        @Nullable Feet feet,
        boolean positive) {

    public Evidence {
        dates = List.copyOf(dates);
        medians = List.copyOf(medians);
    }

    /**
     * Left against right on one foot, at equal height where heights are noted.
     *
     * @param leftLessRight of each session that has both
     * @param middle half of left and right together
     * @param scatter standard deviation between landings of one foot and day
     */
    public record Feet(List<Double> leftLessRight, double middle, double scatter) {

        public Feet {
            leftLessRight = List.copyOf(leftLessRight);
        }

        /** The differences. */
        double[] differences() {
            return leftLessRight.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    /** The medians. */
    double[] values() {
        return medians.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Weeks of each session since the first. */
    double[] weeks() {
        return BySession.weeks(dates);
    }
}
