package evenfall.fusion.alignment;

import java.util.Arrays;

/**
 * A straight line through offsets of two clocks at several moments, robust to outliers: weighted least squares, the
 * weights by Tukey's biweight (Beaton and Tukey 1974, Technometrics 16:147) at 4.685 robust spreads.
 *
 * @param offsetS offset at time 0, s
 * @param drift offset gained per second
 * @param sigmaS one standard deviation of the line, root mean square over the time from the first to the last moment, s
 */
record ClockLine(double offsetS, double drift, double sigmaS) {

    /** An offset that lies so many spreads off the line weighs nothing. */
    private static final double TUKEY = 4.685;
    /** Weights and line follow from one another so many times: more than it takes them to settle; common practice, no source. */
    private static final int ROUNDS = 20;
    /** So many median absolute values are one standard deviation of normal errors (Hampel 1974). */
    private static final double OF_MEDIAN = 1.4826;
    /** Crystals of cheap sensors differ by some tens of parts per million. */
    private static final double DRIFT_SIGMA = 80e-6;
    /** No offset is known better than this, s. */
    private static final double LEAST_SIGMA_S = 0.0005;

    /** Through two moments on both clocks, exactly. */
    static ClockLine through(double firstA, double firstB, double secondA, double secondB) {
        double rate = (secondB - firstB) / (secondA - firstA);
        return new ClockLine(firstB - rate * firstA, rate - 1, 0);
    }

    /**
     * Fits offsets at moments.
     *
     * @param t moments, s
     * @param offset second clock less first at each, s
     */
    static ClockLine fit(double[] t, double[] offset) {
        int n = t.length;
        double[] weight = new double[n];
        Arrays.fill(weight, 1);
        double spread = Math.max(LEAST_SIGMA_S, spread(residuals(t, offset, Median.of(offset), 0)));
        ClockLine line = new ClockLine(Median.of(offset), 0, spread);
        for (int round = 0; round < ROUNDS; round++) {
            line = weighted(t, offset, weight, spread);
            double[] off = residuals(t, offset, line.offsetS, line.drift);
            spread = Math.max(LEAST_SIGMA_S, spread(off));
            for (int i = 0; i < n; i++) {
                double u = off[i] / (TUKEY * spread);
                weight[i] = Math.abs(u) < 1 ? (1 - u * u) * (1 - u * u) : 0;
            }
        }
        return line;
    }

    private static ClockLine weighted(double[] t, double[] offset, double[] w, double spread) {
        double sum = 0;
        double mean = 0;
        double level = 0;
        for (int i = 0; i < t.length; i++) {
            sum += w[i];
            mean += w[i] * t[i];
            level += w[i] * offset[i];
        }
        mean /= sum;
        level /= sum;
        double tt = spread * spread / (DRIFT_SIGMA * DRIFT_SIGMA);
        double to = 0;
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < t.length; i++) {
            tt += w[i] * (t[i] - mean) * (t[i] - mean);
            to += w[i] * (t[i] - mean) * (offset[i] - level);
            first = Math.min(first, t[i]);
            last = Math.max(last, t[i]);
        }
        double drift = to / tt;
        double middle = (first + last) / 2 - mean;
        double apart = middle * middle + (last - first) * (last - first) / 12;
        double sigma = spread * Math.sqrt(1 / sum + apart / tt);
        return new ClockLine(level - drift * mean, drift, sigma);
    }

    private static double[] residuals(double[] t, double[] offset, double at0, double drift) {
        double[] off = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            off[i] = offset[i] - at0 - drift * t[i];
        }
        return off;
    }

    /** Median absolute value, scaled to a standard deviation of normal errors. */
    private static double spread(double[] values) {
        double[] size = new double[values.length];
        for (int i = 0; i < size.length; i++) {
            size[i] = Math.abs(values[i]);
        }
        return OF_MEDIAN * Median.of(size);
    }
}
