package evenfall.report.statistics;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.jspecify.annotations.Nullable;

/**
 * The median of the slopes between any two points (Sen 1968, JASA 63:1379), with Sen's interval: the slopes at ranks
 * taken from the distribution of Kendall's count of pairs that run the other way.
 *
 * <p>Ranks are whole and so hold the truth more often than 95 times in 100 with few points; the ends therefore lie between
 * two slopes, in proportion to what each rank holds. With four or five points ranks are too coarse for that: there the
 * interval is that of least squares (Student's t), laid about the median slope.
 *
 * @param slope the median slope
 * @param interval its 95 % interval, or null with fewer than four points
 */
public record TheilSen(double slope, @Nullable Interval interval) {

    private static final double TAIL = 0.025;

    /** Up to here the exact distribution is counted out; beyond it the normal one is as good. */
    private static final int EXACT = 60;

    private static final int LEAST_FOR_LINE = 4;
    private static final int LEAST_FOR_RANKS = 6;

    /**
     * Fits at least two points of which not all have the same time.
     *
     * @param time of each point
     * @param value of each point
     */
    public static TheilSen of(double[] time, double[] value) {
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
        double slope = Medians.of(sorted);
        double rank = pairs == slopes.length && n <= EXACT ? exactRank(n) : normalRank(time, pairs);
        return new TheilSen(
                slope, n < LEAST_FOR_RANKS || rank < 1 ? byLeastSquares(time, value, slope) : between(sorted, rank));
    }

    /** The slopes at {@code rank} (from 1) from below and from above, between neighbours for what is not whole. */
    private static Interval between(double[] sorted, double rank) {
        int n = sorted.length;
        int whole = (int) rank;
        double part = rank - whole;
        int next = Math.min(whole, n - 1);
        double low = (1 - part) * sorted[whole - 1] + part * sorted[next];
        double high = (1 - part) * sorted[n - whole] + part * sorted[n - 1 - next];
        return new Interval(Math.min(low, high), Math.max(low, high));
    }

    private static @Nullable Interval byLeastSquares(double[] time, double[] value, double slope) {
        if (time.length < LEAST_FOR_LINE) {
            return null;
        }
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < time.length; i++) {
            line.addData(time[i], value[i]);
        }
        return new StudentT(slope, line.getSlopeStdErr(), time.length - 2).interval();
    }

    /** The rank whose slope and its mirror hold the true slope with 95 %, from the count of inversions; below 1: none. */
    private static double exactRank(int n) {
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
        return rank == 0 ? 0 : rank + (TAIL - below) / chance[rank];
    }

    private static double normalRank(double[] time, int pairs) {
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
        return (pairs - z * Math.sqrt(variance / 18)) / 2;
    }
}
