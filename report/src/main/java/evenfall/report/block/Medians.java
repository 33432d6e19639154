package evenfall.report.block;

import java.util.Arrays;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.statistics.descriptive.Median;
import org.jspecify.annotations.Nullable;

/** Medians and their distribution-free intervals. */
final class Medians {

    private static final double TAIL = 0.025;

    private Medians() {}

    /** The median of at least one value. */
    static double of(double[] values) {
        return Median.withDefaults().evaluate(values);
    }

    /**
     * The shortest symmetric pair of order statistics that holds the median with at least 95 %, whatever the
     * distribution (binomial count of values below it; Thompson 1936, Ann. Math. Stat. 7:122, from memory).
     *
     * @return both ends, or null where there are too few values for any pair to hold it
     */
    static double @Nullable [] interval(double[] values) {
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
        return new double[] {sorted[rank - 1], sorted[n - rank]};
    }
}
