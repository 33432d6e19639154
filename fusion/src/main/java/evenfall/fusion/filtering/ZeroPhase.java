package evenfall.fusion.filtering;

/**
 * A filter run forward and backward, so that nothing is shifted in time.
 *
 * <p>The ends are continued by the signal turned about its end point (odd extension), nine samples each way or all but
 * one if there are fewer, and each pass starts in the steady state of its first value (Gustafsson 1996, IEEE
 * Transactions on Signal Processing 44:988, describes the choice; this is the simpler of the usual two).
 */
public final class ZeroPhase {

    /** Three times the number of coefficients of a filter of order 2: common practice, no source. */
    private static final int PADDING = 9;

    private ZeroPhase() {}

    /** {@code x} filtered both ways, as a new array. Empty stays empty; NaN spreads everywhere. */
    public static double[] filter(Biquad filter, double[] x) {
        int n = x.length;
        if (n < 2) {
            return x.clone();
        }
        int pad = Math.min(PADDING, n - 1);
        double[] wide = new double[n + 2 * pad];
        for (int i = 0; i < pad; i++) {
            wide[i] = 2 * x[0] - x[pad - i];
            wide[pad + n + i] = 2 * x[n - 1] - x[n - 2 - i];
        }
        System.arraycopy(x, 0, wide, pad, n);
        steadyPass(filter, wide);
        reverse(wide);
        steadyPass(filter, wide);
        reverse(wide);
        double[] y = new double[n];
        System.arraycopy(wide, pad, y, 0, n);
        return y;
    }

    private static void steadyPass(Biquad filter, double[] xy) {
        filter.pass(xy, filter.steadyFirst() * xy[0], filter.steadySecond() * xy[0]);
    }

    private static void reverse(double[] x) {
        for (int i = 0, j = x.length - 1; i < j; i++, j--) {
            double held = x[i];
            x[i] = x[j];
            x[j] = held;
        }
    }
}
