package evenfall.fusion.landing;

import org.apache.commons.math3.stat.StatUtils;
import org.jspecify.annotations.Nullable;

/**
 * How long after contact a signal comes to rest, by two of the ways in use. They disagree with one another, and the second
 * with itself where trials are of other lengths (Fransz et al. 2015, J Biomech): figures to compare within one study only.
 */
public final class Stabilisation {

    /** A running mean is near within this part of the signal's standard deviation. */
    private static final double NEAR = 0.25;

    private Stabilisation() {}

    /**
     * From when on a signal stays near its rest (Flanagan et al. 2008: within 5 % of body weight for a second).
     *
     * @param timeS s, ascending
     * @param signal of the same length
     * @param rest what it comes to
     * @param band how far from it is near, above 0
     * @param staysS how long it must be seen to stay, s
     * @return s, between the last sample outside and the first one that stays; null where it is not seen to stay
     */
    public static @Nullable Double withinBand(
            double[] timeS, double[] signal, double rest, double band, double staysS) {
        int n = signal.length;
        int first = n;
        while (first > 0 && Math.abs(signal[first - 1] - rest) <= band) {
            first--;
        }
        if (first == n || timeS[n - 1] - timeS[first] < staysS) {
            return null;
        }
        if (first == 0) {
            return timeS[0];
        }
        double outside = Math.abs(signal[first - 1] - rest);
        double inside = Math.abs(signal[first] - rest);
        double share = (outside - band) / (outside - inside);
        return timeS[first - 1] + share * (timeS[first] - timeS[first - 1]);
    }

    /**
     * From when on the mean of all so far stays within a quarter of the signal's standard deviation (over its whole length)
     * of its mean (sequential averaging, from memory).
     *
     * @param timeS s, ascending, at even steps
     * @param signal of the same length, two samples or more
     * @return s, the first sample from which it stays
     */
    public static double ofRunningMean(double[] timeS, double[] signal) {
        double mean = StatUtils.mean(signal);
        double limit = NEAR * Math.sqrt(StatUtils.variance(signal, mean));
        double sum = 0;
        int first = 0;
        for (int i = 0; i < signal.length; i++) {
            sum += signal[i];
            if (Math.abs(sum / (i + 1) - mean) > limit) {
                first = i + 1;
            }
        }
        return timeS[Math.min(first, signal.length - 1)];
    }
}
