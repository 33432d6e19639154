package evenfall.fusion.filtering;

/** Rates of change of signals on an even clock. */
public final class Derivative {

    private Derivative() {}

    /**
     * First derivative by central differences, exact for a parabola; at the ends by the one-sided difference of second
     * order, or of first order with two samples, and 0 with one.
     *
     * @param x samples
     * @param rateHz samples a second
     * @return units of {@code x} per second, as long as {@code x}
     */
    public static double[] first(double[] x, double rateHz) {
        int n = x.length;
        double[] d = new double[n];
        if (n == 2) {
            d[0] = (x[1] - x[0]) * rateHz;
            d[1] = d[0];
        } else if (n > 2) {
            for (int i = 1; i + 1 < n; i++) {
                d[i] = (x[i + 1] - x[i - 1]) * rateHz / 2;
            }
            d[0] = (-3 * x[0] + 4 * x[1] - x[2]) * rateHz / 2;
            d[n - 1] = (3 * x[n - 1] - 4 * x[n - 2] + x[n - 3]) * rateHz / 2;
        }
        return d;
    }

    /**
     * Second derivative by central differences; the ends repeat their neighbours. All 0 with fewer than three samples.
     *
     * @param x samples
     * @param rateHz samples a second
     * @return units of {@code x} per second squared, as long as {@code x}
     */
    public static double[] second(double[] x, double rateHz) {
        int n = x.length;
        double[] d = new double[n];
        if (n > 2) {
            for (int i = 1; i + 1 < n; i++) {
                d[i] = (x[i + 1] - 2 * x[i] + x[i - 1]) * rateHz * rateHz;
            }
            d[0] = d[1];
            d[n - 1] = d[n - 2];
        }
        return d;
    }
}
