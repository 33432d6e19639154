package evenfall.report.statistics;

import org.apache.commons.math3.distribution.FDistribution;
import org.jspecify.annotations.Nullable;

/**
 * How much more alike values of one thing are than those of different things (Shrout and Fleiss 1979, Psychological Bulletin
 * 86:420).
 *
 * @param value 1 where they are the same, 0 where they are no more alike than others, below 0 where less; of single values
 * @param spread standard deviation of single values, of what is alike and what is not together
 * @param interval its 95 % interval by Fisher's F
 */
public record IntraclassCorrelation(double value, double spread, Interval interval) {

    private static final double UPPER = 0.975;

    /** Of the mean of so many values instead of single ones (Spearman 1910, Brown 1910). */
    public double ofMean(double count) {
        return count * value / (1 + (count - 1) * value);
    }

    /** Standard error of measurement of one value: what of its spread is not alike. */
    public double errorOfOne() {
        return spread * Math.sqrt(1 - value);
    }

    /**
     * Groups of values that nothing else orders, such as landings of days: their form (1,1). Groups need not be of one size.
     *
     * @return null with fewer than two groups, no group of two, or where all values are the same
     */
    public static @Nullable IntraclassCorrelation ofGroups(double[][] groups) {
        int all = 0;
        double sum = 0;
        double sizes = 0;
        for (double[] group : groups) {
            all += group.length;
            sizes += (double) group.length * group.length;
            for (double value : group) {
                sum += value;
            }
        }
        int n = groups.length;
        if (n < 2 || all <= n) {
            return null;
        }
        double between = 0;
        double within = 0;
        for (double[] group : groups) {
            double mean = Columns.mean(group);
            between += group.length * (mean - sum / all) * (mean - sum / all);
            for (double value : group) {
                within += (value - mean) * (value - mean);
            }
        }
        between /= n - 1;
        within /= all - n;
        if (!(between + within > 0)) {
            return null;
        }
        double k = (all - sizes / all) / (n - 1);
        return oneWay(between, within, k, n - 1, all - n);
    }

    private static IntraclassCorrelation oneWay(double between, double within, double k, double df1, double df2) {
        double spread = Math.sqrt(within + (between - within) / k);
        double share = (between - within) / (between + (k - 1) * within);
        return new IntraclassCorrelation(share, spread, interval(between, within, k, df1, df2));
    }

    /**
     * Things each measured once by the same few, all of whom are meant: their form (3,1), which does not mind that one of them
     * always measures more.
     *
     * @param table a row a thing, a column a measurer; at least two of each
     * @return null where all values are the same
     */
    public static @Nullable IntraclassCorrelation consistency(double[][] table) {
        Squares s = new Squares(table);
        return s.between + s.error > 0 ? oneWay(s.between, s.error, s.k, s.n - 1.0, (s.n - 1.0) * (s.k - 1.0)) : null;
    }

    /** The same where it does matter that one always measures more: their form (2,1). */
    public static @Nullable IntraclassCorrelation agreement(double[][] table) {
        Squares s = new Squares(table);
        double n = s.n;
        double k = s.k;
        double whole = s.between + (k - 1) * s.error + k * (s.judges - s.error) / n;
        if (!(whole > 0) || !(s.error > 0)) {
            return null;
        }
        double value = (s.between - s.error) / whole;
        double ratio = s.judges / s.error;
        double a = k * value * ratio;
        double b = n * (1 + (k - 1) * value) - k * value;
        double freedom = (k - 1) * (n - 1) * (a + b) * (a + b) / ((n - 1) * a * a + b * b);
        double rest = k * s.judges + (k * n - k - n) * s.error;
        double down = f(n - 1, freedom);
        double up = f(freedom, n - 1);
        double low = n * (s.between - down * s.error) / (down * rest + n * s.between);
        double high = n * (up * s.between - s.error) / (rest + n * up * s.between);
        return new IntraclassCorrelation(
                value, Math.sqrt(whole / k), new Interval(Math.min(low, high), Math.max(low, high)));
    }

    private static Interval interval(double between, double within, double k, double df1, double df2) {
        if (!(within > 0)) {
            return new Interval(1, 1);
        }
        double ratio = between / within;
        double low = ratio / f(df1, df2);
        double high = ratio * f(df2, df1);
        return new Interval((low - 1) / (low + k - 1), (high - 1) / (high + k - 1));
    }

    private static double f(double df1, double df2) {
        // Null: no random draws are ever asked of it.
        return new FDistribution(null, df1, df2).inverseCumulativeProbability(UPPER);
    }

    /** Mean squares of a table: between things, between measurers, and what is left. */
    private static final class Squares {

        private final int n;
        private final int k;
        private final double between;
        private final double judges;
        private final double error;

        Squares(double[][] table) {
            this.n = table.length;
            this.k = table[0].length;
            double[] columns = new double[k];
            double all = 0;
            for (double[] row : table) {
                for (int j = 0; j < k; j++) {
                    columns[j] += row[j] / n;
                    all += row[j] / n / k;
                }
            }
            double rowSquares = 0;
            double columnSquares = 0;
            double whole = 0;
            for (double[] row : table) {
                double mean = Columns.mean(row);
                rowSquares += k * (mean - all) * (mean - all);
                for (double value : row) {
                    whole += (value - all) * (value - all);
                }
            }
            for (double column : columns) {
                columnSquares += n * (column - all) * (column - all);
            }
            this.between = rowSquares / (n - 1);
            this.judges = columnSquares / (k - 1);
            this.error = Math.max(0, whole - rowSquares - columnSquares) / ((n - 1.0) * (k - 1.0));
        }
    }
}
