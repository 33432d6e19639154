package evenfall.fusion.landing;

/**
 * How much of a blow the spine between two sensors took away. It says nothing of forces, and the straps give as well: an
 * upper-back sensor on a loose strap seems to be hit harder than the back is.
 */
public final class Attenuation {

    private Attenuation() {}

    /**
     * Of two peaks, percent: 0 where as much arrives above as below, negative where more does.
     *
     * @param below peak at the pelvis, above 0
     * @param above peak at the upper back, same unit
     */
    public static double percent(double below, double above) {
        return (1 - above / below) * 100;
    }

    /**
     * Of the power in a band of frequencies, dB: ten times the common logarithm of the upper signal's power over the lower
     * one's, so that what is taken away is negative (Mercer et al. 2002, doi 10.1007/s00421-002-0646-9, who average
     * 10 to 20 Hz).
     *
     * @param below samples at the pelvis, as many as above, four or more
     * @param above samples at the upper back at the same times
     * @param rateHz samples a second
     * @param fromHz lowest frequency of the band
     * @param toHz highest frequency of the band, at most half the rate
     * @return NaN where the band holds no power in the lower signal or none in the upper one
     */
    public static double decibels(double[] below, double[] above, double rateHz, double fromHz, double toHz) {
        double lower = power(below, rateHz, fromHz, toHz);
        double upper = power(above, rateHz, fromHz, toHz);
        return lower > 0 && upper > 0 ? 10 * Math.log10(upper / lower) : Double.NaN;
    }

    /** The power at the band's multiples of one over the signal's length; of no unit, for only ratios of it are used. */
    private static double power(double[] signal, double rateHz, double fromHz, double toHz) {
        int n = signal.length;
        double power = 0;
        for (int k = Math.max(1, (int) Math.ceil(fromHz * n / rateHz)); k <= toHz * n / rateHz; k++) {
            double real = 0;
            double imaginary = 0;
            for (int i = 0; i < n; i++) {
                real += signal[i] * Math.cos(2 * Math.PI * k * i / n);
                imaginary += signal[i] * Math.sin(2 * Math.PI * k * i / n);
            }
            power += real * real + imaginary * imaginary;
        }
        return power;
    }
}
