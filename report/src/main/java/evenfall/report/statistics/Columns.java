package evenfall.report.statistics;

/** Sums over columns of values. */
final class Columns {

    private Columns() {}

    /** The mean of at least one value. */
    static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** The sum of the products of two columns of one length. */
    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /**
     * Each value less the mean of its group.
     *
     * @param group number of each value's group, 0 to {@code groups} - 1
     */
    static double[] centred(int[] group, int groups, double[] values) {
        double[] sum = new double[groups];
        int[] count = new int[groups];
        for (int i = 0; i < values.length; i++) {
            sum[group[i]] += values[i];
            count[group[i]]++;
        }
        double[] centred = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            centred[i] = values[i] - sum[group[i]] / count[group[i]];
        }
        return centred;
    }
}
