package evenfall.report.statistics;

/**
 * What an estimate says of its own error when one thing drawn at random after another (a session) is left out (Efron and
 * Tibshirani 1993, An Introduction to the Bootstrap, chapter 11).
 */
public final class Jackknife {

    private Jackknife() {}

    /** The standard error of an estimate, from the two or more estimates that each leave out one. */
    public static double error(double[] without) {
        int n = without.length;
        return Math.sqrt((n - 1.0) / n * moment(without, 2));
    }

    /**
     * How fast the standard error changes with the estimate: the acceleration of a BCa interval (there, equation 14.15).
     *
     * @param without the estimates that each leave out one, not all the same
     */
    static double acceleration(double[] without) {
        return -moment(without, 3) / (6 * Math.pow(moment(without, 2), 1.5));
    }

    private static double moment(double[] values, int power) {
        double mean = 0;
        for (double value : values) {
            mean += value / values.length;
        }
        double sum = 0;
        for (double value : values) {
            sum += Math.pow(value - mean, power);
        }
        return sum;
    }
}
