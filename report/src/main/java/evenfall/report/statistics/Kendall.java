package evenfall.report.statistics;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Whether values go with time, by their order alone (Mann 1945, Econometrica 13:245; Kendall 1970, Rank Correlation Methods,
 * for ties). Values that go on from day to day make the chance too small.
 *
 * @param pairs pairs that rise with time less those that fall
 * @param variance of that, were the order chance
 * @param tau Kendall's tau b, -1 to 1; 0 where all values or all times are the same
 * @param chance how often chance alone would give as much to either side, by the normal distribution
 */
public record Kendall(int pairs, double variance, double tau, double chance) {

    /** Of at least two points. */
    public static Kendall of(double[] time, double[] value) {
        int n = time.length;
        int pairs = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                pairs += (int) (Math.signum(time[j] - time[i]) * Math.signum(value[j] - value[i]));
            }
        }
        Ties times = Ties.of(time);
        Ties values = Ties.of(value);
        double all = n * (n - 1.0);
        double variance =
                (all * (2 * n + 5) - times.third - values.third) / 18 + times.pairs * values.pairs / (2 * all);
        if (n > 2) {
            variance += times.triples * values.triples / (9 * all * (n - 2));
        }
        double untied = Math.sqrt((all - times.pairs) * (all - values.pairs));
        double z = variance > 0 ? (pairs - Math.signum((double) pairs)) / Math.sqrt(variance) : 0;
        double chance = Math.min(1, 2 * new NormalDistribution(null, 0, 1).cumulativeProbability(-Math.abs(z)));
        return new Kendall(pairs, variance, untied > 0 ? 2 * pairs / untied : 0, chance);
    }

    /** Sums over runs of equal values, c in each: c(c-1), c(c-1)(c-2) and c(c-1)(2c+5). */
    private record Ties(double pairs, double triples, double third) {

        static Ties of(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            double pairs = 0;
            double triples = 0;
            double third = 0;
            int run = 1;
            for (int i = 1; i <= sorted.length; i++) {
                if (i < sorted.length && sorted[i] == sorted[i - 1]) {
                    run++;
                } else {
                    double two = run * (run - 1.0);
                    pairs += two;
                    triples += two * (run - 2);
                    third += two * (2 * run + 5);
                    run = 1;
                }
            }
            return new Ties(pairs, triples, third);
        }
    }
}
