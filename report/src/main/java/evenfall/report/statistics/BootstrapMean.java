package evenfall.report.statistics;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.jspecify.annotations.Nullable;

/**
 * What the mean of a few values says by the bootstrap (Efron and Tibshirani 1993, An Introduction to the Bootstrap, chapters
 * 6, 13 and 14): with ten values or fewer of all resamples there are, counted and not drawn; beyond, of resamples drawn the same
 * each time.
 *
 * @param error standard error of the mean
 * @param percentile 95 % interval by percentiles
 * @param bca 95 % interval, bias-corrected and accelerated; equal means count half below
 */
public record BootstrapMean(double error, Interval percentile, Interval bca) {

    private static final double TAIL = 0.025;
    private static final int COUNTED = 10;
    private static final int DRAWN = 20_000;
    private static final long SEED = 20260302;
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    /** Of these values; null with fewer than three, or where all are the same. */
    public static @Nullable BootstrapMean of(double[] values) {
        int n = values.length;
        double mean = Arrays.stream(values).average().orElse(0);
        double spread = Arrays.stream(values).map(v -> Math.abs(v - mean)).max().orElse(0);
        if (n < 3 || !(spread > 0)) {
            return null;
        }
        Resamples all = n <= COUNTED ? Resamples.counted(values) : Resamples.drawn(values);
        double below = 0;
        double squares = 0;
        for (int k = 0; k < all.means.length; k++) {
            double off = all.means[k] - mean;
            squares += all.chance[k] * off * off;
            below += Math.abs(off) < 1e-9 * spread ? all.chance[k] / 2 : off < 0 ? all.chance[k] : 0;
        }
        double[] without =
                Arrays.stream(values).map(v -> (n * mean - v) / (n - 1)).toArray();
        double bias = NORMAL.inverseCumulativeProbability(below);
        double acceleration = Jackknife.acceleration(without);
        return new BootstrapMean(
                Math.sqrt(squares),
                all.between(TAIL, 1 - TAIL),
                all.between(adjusted(TAIL, bias, acceleration), adjusted(1 - TAIL, bias, acceleration)));
    }

    /** Equation 14.10 there. */
    private static double adjusted(double level, double bias, double acceleration) {
        double z = bias + NORMAL.inverseCumulativeProbability(level);
        return NORMAL.cumulativeProbability(bias + z / (1 - acceleration * z));
    }

    /** Means of resamples in order, and how often each is drawn. */
    private static final class Resamples {

        private final double[] means;
        private final double[] chance;

        private Resamples(double[] means, double[] chance) {
            Integer[] order = new Integer[means.length];
            Arrays.setAll(order, i -> i);
            Arrays.sort(order, (a, b) -> Double.compare(means[a], means[b]));
            this.means = Arrays.stream(order).mapToDouble(i -> means[i]).toArray();
            this.chance = Arrays.stream(order).mapToDouble(i -> chance[i]).toArray();
        }

        static Resamples counted(double[] values) {
            int n = values.length;
            int most = ways(n);
            double[] means = new double[most];
            double[] chance = new double[most];
            count(values, 0, n, 0, 1, new int[1], means, chance);
            return new Resamples(means, chance);
        }

        /** Resamples by how often they hold each value: (2n-1 over n) of them. */
        private static int ways(int n) {
            double ways = 1;
            for (int i = 1; i < n; i++) {
                ways *= (n + i) / (double) i;
            }
            return (int) Math.round(ways);
        }

        private static void count(
                double[] values,
                int at,
                int left,
                double sum,
                double chance,
                int[] next,
                double[] means,
                double[] chances) {
            int n = values.length;
            if (at == n - 1) {
                means[next[0]] = (sum + left * values[at]) / n;
                chances[next[0]++] = chance * Math.pow(1.0 / n, left);
                return;
            }
            double some = chance;
            for (int times = 0; times <= left; times++) {
                count(values, at + 1, left - times, sum + times * values[at], some, next, means, chances);
                some *= (left - times) / (times + 1.0) / n;
            }
        }

        static Resamples drawn(double[] values) {
            SplittableRandom random = new SplittableRandom(SEED);
            double[] means = new double[DRAWN];
            double[] chance = new double[DRAWN];
            Arrays.fill(chance, 1.0 / DRAWN);
            for (int draw = 0; draw < DRAWN; draw++) {
                for (int i = 0; i < values.length; i++) {
                    means[draw] += values[random.nextInt(values.length)] / values.length;
                }
            }
            return new Resamples(means, chance);
        }

        Interval between(double low, double high) {
            return new Interval(at(low), at(high));
        }

        /** The least mean that at least this share does not exceed. */
        private double at(double level) {
            double sum = 0;
            for (int k = 0; k < means.length; k++) {
                sum += chance[k];
                if (sum >= level - 1e-12) {
                    return means[k];
                }
            }
            return means[means.length - 1];
        }
    }
}
