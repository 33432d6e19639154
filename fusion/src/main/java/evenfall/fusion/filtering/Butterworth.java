package evenfall.fusion.filtering;

/**
 * Butterworth low-pass filters of order 2, by the bilinear transform with the cut-off warped so that it is met exactly.
 *
 * <p>Source: Winter, Biomechanics and Motor Control of Human Movement, 4th ed. 2009, chapter 3; the two-pass correction
 * also Robertson and Dowling 2003, Journal of Electromyography and Kinesiology 13:569.
 */
public final class Butterworth {

    /** What two passes do to the cut-off of a filter of order 2, on the warped frequency: (√2 - 1)^¼ = 0.802243. */
    public static final double TWO_PASS_FACTOR = Math.sqrt(Math.sqrt(Math.sqrt(2) - 1));

    private Butterworth() {}

    /**
     * A filter whose one pass is 3 dB down at {@code cutoffHz}.
     *
     * @throws IllegalArgumentException if the cut-off does not lie between 0 and half the rate
     */
    public static Biquad lowPass(double cutoffHz, double rateHz) {
        check(cutoffHz, rateHz);
        return ofWarped(Math.tan(Math.PI * cutoffHz / rateHz));
    }

    /**
     * A filter that is 3 dB down at {@code cutoffHz} after a pass forward and a pass backward.
     *
     * @throws IllegalArgumentException if the cut-off does not lie between 0 and half the rate
     */
    public static Biquad twoPassLowPass(double cutoffHz, double rateHz) {
        check(cutoffHz, rateHz);
        return ofWarped(Math.tan(Math.PI * cutoffHz / rateHz) / TWO_PASS_FACTOR);
    }

    /** Cut-off of one pass of {@link #twoPassLowPass}, Hz. */
    public static double twoPassDesignHz(double cutoffHz, double rateHz) {
        check(cutoffHz, rateHz);
        return rateHz / Math.PI * Math.atan(Math.tan(Math.PI * cutoffHz / rateHz) / TWO_PASS_FACTOR);
    }

    /**
     * A filter by its time constant: cut-off √2 / (2π tau) (Laidig and Seel 2023, Information Fusion 91:187).
     *
     * @param seconds time constant, s
     */
    public static Biquad ofTimeConstant(double seconds, double rateHz) {
        return lowPass(Math.sqrt(2) / (2 * Math.PI * seconds), rateHz);
    }

    private static Biquad ofWarped(double warped) {
        double square = warped * warped;
        double d = 1 + Math.sqrt(2) * warped + square;
        double b = square / d;
        return new Biquad(b, 2 * b, b, 2 * (square - 1) / d, (1 - Math.sqrt(2) * warped + square) / d);
    }

    private static void check(double cutoffHz, double rateHz) {
        if (cutoffHz > 0 && cutoffHz < rateHz / 2) {
            return;
        }
        throw new IllegalArgumentException(
                "a cut-off of " + cutoffHz + " Hz needs to lie between 0 and half the rate of " + rateHz + " Hz");
    }
}
