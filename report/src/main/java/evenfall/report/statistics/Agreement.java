package evenfall.report.statistics;

import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.jspecify.annotations.Nullable;

/**
 * How far two ways to measure the same lie apart (Bland and Altman 1986, Lancet i:307), pairs taken as independent.
 *
 * @param n pairs
 * @param mean first less second, on average
 * @param spread standard deviation of the differences
 * @param limits 95 in 100 differences lie between: the mean and 1.96 spreads to either side
 * @param limitError standard error of either limit
 * @param correlation of the two, or null where one of them does not vary; high where values spread, however poorly two agree
 */
public record Agreement(
        int n,
        double mean,
        double spread,
        Interval limits,
        double limitError,
        @Nullable Double correlation) {

    private static final double REACH = 1.96;

    /** Of at least two pairs. */
    public static Agreement of(double[] first, double[] second) {
        double[] differences = differences(first, second);
        double mean = 0;
        for (double difference : differences) {
            mean += difference / differences.length;
        }
        double spread = new StandardDeviation().evaluate(differences);
        double correlation = new PearsonsCorrelation().correlation(first, second);
        return new Agreement(
                differences.length,
                mean,
                spread,
                Interval.about(mean, REACH * spread),
                Math.sqrt(3 * spread * spread / differences.length),
                Double.isFinite(correlation) ? Double.valueOf(correlation) : null);
    }

    /** Two values measured alike differ by no more, 95 times in 100: twice the root of the mean squared difference of pairs. */
    public static double repeatability(double[] first, double[] second) {
        double squares = 0;
        for (double difference : differences(first, second)) {
            squares += difference * difference / first.length;
        }
        return 2 * Math.sqrt(squares);
    }

    private static double[] differences(double[] first, double[] second) {
        double[] differences = new double[first.length];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = first[i] - second[i];
        }
        return differences;
    }
}
