package evenfall.fusion.alignment;

import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.jspecify.annotations.Nullable;

/**
 * By how much one column is later than another, from the whole of both. Motion that repeats itself fits at several places;
 * then the place nearest to 0 is taken, for sensors are switched on about together, and the other is named.
 *
 * @param steps grid steps by which the second column is later
 * @param rival another place that fits nearly as well, grid steps, or null
 */
record OffsetGuess(int steps, @Nullable Integer rival) {

    /** So much of the best product is nearly as good. */
    private static final double NEARLY = 0.8;
    /** Places nearer to one another than this are the slopes of one, s. */
    private static final double APART_S = 1;

    /**
     * The guess for two columns on the grid of {@link ForceColumn}.
     *
     * @param span at most so many values of each are looked at
     */
    static OffsetGuess of(double[] first, double[] second, int span) {
        double[] product = product(first, Math.min(span, first.length), second, Math.min(span, second.length));
        int size = product.length;
        int best = 0;
        for (int k = 1; k < size; k++) {
            best = product[k] > product[best] ? k : best;
        }
        int nearest = signed(best, size);
        Integer farther = null;
        int apart = (int) Math.round(APART_S / ForceColumn.STEP_S);
        for (int k = 0; k < size; k++) {
            int place = signed(k, size);
            boolean peak = product[k] > product[(k + size - 1) % size] && product[k] >= product[(k + 1) % size];
            if (!peak || product[k] < NEARLY * product[best] || Math.abs(place - nearest) < apart) {
                continue;
            }
            if (Math.abs(place) < Math.abs(nearest)) {
                farther = nearest;
                nearest = place;
            } else if (farther == null || Math.abs(place) < Math.abs(farther)) {
                farther = place;
            }
        }
        return new OffsetGuess(nearest, farther);
    }

    private static int signed(int k, int size) {
        return k < size / 2 ? k : k - size;
    }

    private static double[] product(double[] first, int n, double[] second, int m) {
        int size = Integer.highestOneBit(2 * Math.max(n, m) - 1) << 1;
        double[][] a = transform(first, n, size);
        double[][] b = transform(second, m, size);
        for (int k = 0; k < size; k++) {
            double real = a[0][k] * b[0][k] + a[1][k] * b[1][k];
            b[1][k] = a[0][k] * b[1][k] - a[1][k] * b[0][k];
            b[0][k] = real;
        }
        FastFourierTransformer.transformInPlace(b, DftNormalization.STANDARD, TransformType.INVERSE);
        return b[0];
    }

    /** Real and imaginary parts of the first {@code n} values, made up by zeros to {@code size}. */
    private static double[][] transform(double[] x, int n, int size) {
        double[][] padded = new double[2][size];
        System.arraycopy(x, 0, padded[0], 0, n);
        FastFourierTransformer.transformInPlace(padded, DftNormalization.STANDARD, TransformType.FORWARD);
        return padded;
    }
}
