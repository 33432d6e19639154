package evenfall.report.coaching;

import evenfall.report.session.AlikeLandings;
import evenfall.report.statistics.Medians;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is usual in one measure for one athlete on one foot at one height, and how far a landing may lie from it and still be
 * usual.
 *
 * @param median the median, in the measure's unit and sign
 * @param spread 1.4826 times the median distance from it, which is the standard deviation where values are normal
 *     (Hampel 1974, J. Am. Stat. Assoc. 69:383)
 * @param count landings it is taken from
 */
record UsualReach(double median, double spread, int count) {

    private static final double SPREADS = 3;
    private static final double FEW = 4;

    /**
     * What is usual by these landings; null where there are fewer than {@value AlikeLandings#FEWEST}, or where so many of them were larger
     * than the sensor could show that the median is not known.
     */
    static @Nullable UsualReach of(List<Reading> readings) {
        if (readings.size() < AlikeLandings.FEWEST) {
            return null;
        }
        double[] values = readings.stream()
                .mapToDouble(reading -> reading.atLeast() ? Double.POSITIVE_INFINITY : reading.value())
                .toArray();
        double median = Medians.of(values);
        if (!Double.isFinite(median)) {
            return null;
        }
        double spread = Medians.spread(values, median);
        return Double.isFinite(spread) ? new UsualReach(median, spread, values.length) : null;
    }

    /**
     * How far from the median a value may lie and still be usual: three spreads, and more where they are taken from few
     * landings. A spread counts as no less than the error of the value and than {@code floor}.
     */
    double reach(double sigma, double floor) {
        return SPREADS * (1 + FEW / count) * Math.max(spread, Math.max(sigma, floor));
    }
}
