package evenfall.ingest.recording;

import java.util.Arrays;

/**
 * The grid on which the values of a column lie: what one step of the sensor's converter is, through the rounding of the
 * printed number.
 */
final class NumberGrid {

    private static final int LOOKED_AT = 4096;
    private static final int FEWEST = 8;

    /** Differences up to this many of the smallest are single steps. */
    private static final double SINGLE = 1.5;

    /** Share of a step that a value may lie beside the grid. */
    private static final double BESIDE = 0.25;

    /** Share of values that must lie on it. */
    private static final double FITTING = 0.98;

    private NumberGrid() {}

    /** The grid step of a column, in its unit; NaN if there are too few different values or no grid. */
    static double step(SampleColumns columns, int column) {
        double[] values = distinct(columns, column);
        if (values.length < FEWEST) {
            return Double.NaN;
        }
        double single = singleStep(values);
        return refined(values, single);
    }

    private static double[] distinct(SampleColumns columns, int column) {
        int n = Math.min(LOOKED_AT, columns.size());
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = columns.value(column, (int) ((long) i * columns.size() / n));
        }
        Arrays.sort(values);
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (count == 0 || values[i] != values[count - 1]) {
                values[count++] = values[i];
            }
        }
        return Arrays.copyOf(values, count);
    }

    /** The mean of the differences that are about as small as the smallest. */
    private static double singleStep(double[] sorted) {
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            smallest = Math.min(smallest, sorted[i] - sorted[i - 1]);
        }
        double sum = 0;
        int count = 0;
        for (int i = 1; i < sorted.length; i++) {
            double difference = sorted[i] - sorted[i - 1];
            if (difference <= SINGLE * smallest) {
                sum += difference;
                count++;
            }
        }
        return sum / count;
    }

    /** Walks outward from the middle value, counting steps, and sharpens the step with every value it meets. */
    private static double refined(double[] sorted, double single) {
        double step = single;
        int middle = sorted.length / 2;
        double origin = sorted[middle];
        double products = 0;
        double squares = 0;
        int fitting = 0;
        int low = middle - 1;
        int high = middle + 1;
        while (low >= 0 || high < sorted.length) {
            boolean up = low < 0 || (high < sorted.length && sorted[high] - origin <= origin - sorted[low]);
            double away = sorted[up ? high++ : low--] - origin;
            double count = Math.rint(away / step);
            if (Math.abs(away - count * step) <= BESIDE * step) {
                fitting++;
                products += away * count;
                squares += count * count;
                step = products / squares;
            }
        }
        return fitting >= FITTING * (sorted.length - 1) ? step : Double.NaN;
    }
}
