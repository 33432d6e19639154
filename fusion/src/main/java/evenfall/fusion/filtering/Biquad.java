package evenfall.fusion.filtering;

/**
 * A filter of second order: y[n] = b0 x[n] + b1 x[n-1] + b2 x[n-2] - a1 y[n-1] - a2 y[n-2].
 *
 * @param b0 weight of the newest input
 * @param b1 weight of the input one sample ago
 * @param b2 weight of the input two samples ago
 * @param a1 minus the weight of the output one sample ago
 * @param a2 minus the weight of the output two samples ago
 */
public record Biquad(double b0, double b1, double b2, double a1, double a2) {

    /** Gain for a constant. */
    public double constantGain() {
        return (b0 + b1 + b2) / (1 + a1 + a2);
    }

    /** First memory cell (transposed direct form II) that goes with a constant input of 1 in the steady state. */
    public double steadyFirst() {
        return constantGain() - b0;
    }

    /** Second memory cell that goes with a constant input of 1 in the steady state. */
    public double steadySecond() {
        return b2 - a2 * constantGain();
    }

    /** Gain of one pass for a sine of {@code hertz} sampled at {@code rateHz}, not below 0. */
    public double gain(double hertz, double rateHz) {
        double u = 2 * Math.PI * hertz / rateHz;
        double re = b0 + b1 * Math.cos(u) + b2 * Math.cos(2 * u);
        double im = b1 * Math.sin(u) + b2 * Math.sin(2 * u);
        double reDown = 1 + a1 * Math.cos(u) + a2 * Math.cos(2 * u);
        double imDown = a1 * Math.sin(u) + a2 * Math.sin(2 * u);
        return Math.hypot(re, im) / Math.hypot(reDown, imDown);
    }

    /** One pass forward over a copy of {@code x}, from rest (all memory 0). NaN spreads to the end. */
    public double[] filter(double[] x) {
        double[] y = x.clone();
        pass(y, 0, 0);
        return y;
    }

    /** One pass forward in place from given memory cells. */
    void pass(double[] xy, double first, double second) {
        double s1 = first;
        double s2 = second;
        for (int i = 0; i < xy.length; i++) {
            double in = xy[i];
            double out = b0 * in + s1;
            s1 = b1 * in - a1 * out + s2;
            s2 = b2 * in - a2 * out;
            xy[i] = out;
        }
    }
}
