package evenfall.report.statistics;

import java.util.Arrays;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.statistics.descriptive.Median;
import org.jspecify.annotations.Nullable;

/** Medians and their distribution-free intervals. */
public final class Medians {

    private static final double TAIL = 0.025;

    /** Times the median distance: the standard deviation where values are normal (Hampel 1974, JASA 69:383). */
    private static final double NORMAL = 1.4826;

    private static final Median COPYING = Median.withDefaults().withCopy(true);
    private static final Median IN_PLACE = Median.withDefaults().withCopy(false);

    private Medians() {}

    /** The median of at least one value; the values stay in their order. */
    public static double of(double[] values) {
        return COPYING.evaluate(values);
    }

    /** The robust spread of at least one value about {@code middle}: 1.4826 times the median distance from it. */
    public static double spread(double[] values, double middle) {
        double[] distances = new double[values.length];
        for (int i = 0; i < distances.length; i++) {
            distances[i] = Math.abs(values[i] - middle);
        }
        return NORMAL * IN_PLACE.evaluate(distances);
    }

    /**
     * The 95 % interval of the median, whatever the distribution: order statistics by the binomial count of values below
     * the median (Thompson 1936, Ann. Math. Stat. 7:122, from memory), and between the pair that holds it with a little
     * more and the one with a little less the point that holds it with 95 % (Hettmansperger and Sheather 1986, Statistics
     * and Probability Letters 4:75).
     *
     * @return the interval, or null where there are too few values (below six) for any pair to hold it
     */
    public static @Nullable Interval interval(double[] values) {
        int n = values.length;
        // Null: no random draws are ever asked of this distribution.
        BinomialDistribution below = new BinomialDistribution(null, n, 0.5);
        int rank = 0;
        while (rank < n && below.cumulativeProbability(rank) <= TAIL) {
            rank++;
        }
        if (rank == 0) {
            return null;
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double wider = 1 - 2 * below.cumulativeProbability(rank - 1);
        double narrower = 1 - 2 * below.cumulativeProbability(rank);
        double step = (wider - (1 - 2 * TAIL)) / (wider - narrower);
        double inward = (n - rank) * step / (rank + (n - 2 * rank) * step);
        double low = (1 - inward) * sorted[rank - 1] + inward * sorted[rank];
        double high = (1 - inward) * sorted[n - rank] + inward * sorted[n - rank - 1];
        return new Interval(Math.min(low, high), Math.max(low, high));
    }
}
