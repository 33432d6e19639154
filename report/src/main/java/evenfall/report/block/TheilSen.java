package evenfall.report.block;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The median of the slopes between any two points (Sen 1968, JASA 63:1379), with Sen's interval: the slopes at ranks
 * taken from the distribution of Kendall's count of pairs that run the other way.
 *
 * @param slope the median slope
 * @param low lower end of the 95 % interval, or null where so few points give none
 * @param high upper end, or null
 */
record TheilSen(
        double slope, @Nullable Double low, @Nullable Double high) {

    private static final double TAIL = 0.025;

    /** Up to here the exact distribution is counted out; beyond it the normal one is as good. */
    private static final int EXACT = 60;

    /**
     * Fits at least two points of which not all have the same time.
     *
     * @param time of each point
     * @param value of each point
     */
    static TheilSen of(double[] time, double[] value) {
        int n = time.length;
        double[] slopes = new double[n * (n - 1) / 2];
        int pairs = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (time[j] != time[i]) {
                    slopes[pairs++] = (value[j] - value[i]) / (time[j] - time[i]);
                }
            }
        }
        if (pairs == 0) {
            throw new IllegalArgumentException("all points have the same time");
        }
        double[] sorted = Arrays.copyOf(slopes, pairs);
        Arrays.sort(sorted);
        int rank = pairs == slopes.length && n <= EXACT ? exactRank(n) : normalRank(time, pairs);
        double slope = Medians.of(sorted);
        return rank < 1 ? new TheilSen(slope, null, null) : new TheilSen(slope, sorted[rank - 1], sorted[pairs - rank]);
    }

    /** Largest rank whose slope and its mirror hold the true slope with 95 %, from the count of inversions. */
    private static int exactRank(int n) {
        int most = n * (n - 1) / 2;
        double[] chance = new double[most + 1];
        chance[0] = 1;
        for (int m = 2; m <= n; m++) {
            double[] next = new double[most + 1];
            for (int k = 0; k <= most; k++) {
                for (int moved = 0; moved < m && moved <= k; moved++) {
                    next[k] += chance[k - moved] / m;
                }
            }
            chance = next;
        }
        int rank = 0;
        double below = 0;
        while (rank <= most && below + chance[rank] <= TAIL) {
            below += chance[rank];
            rank++;
        }
        return rank;
    }

    private static int normalRank(double[] time, int pairs) {
        int n = time.length;
        double variance = n * (n - 1.0) * (2 * n + 5.0);
        double[] sorted = time.clone();
        Arrays.sort(sorted);
        int run = 1;
        for (int i = 1; i <= n; i++) {
            if (i < n && sorted[i] == sorted[i - 1]) {
                run++;
            } else {
                variance -= run * (run - 1.0) * (2 * run + 5.0);
                run = 1;
            }
        }
        double z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(1 - TAIL);
        return (int) Math.floor((pairs - z * Math.sqrt(variance / 18)) / 2);
    }
}
