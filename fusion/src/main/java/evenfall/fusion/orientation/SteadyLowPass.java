package evenfall.fusion.orientation;

import evenfall.fusion.filtering.Biquad;

/** A low-pass over three signals that starts in the steady state of its first values. */
final class SteadyLowPass {

    private final Biquad filter;
    private final double[] first = new double[3];
    private final double[] second = new double[3];
    private boolean started;

    SteadyLowPass(Biquad filter) {
        this.filter = filter;
    }

    void filter(double[] values) {
        for (int i = 0; i < 3; i++) {
            double in = values[i];
            if (!started) {
                first[i] = filter.steadyFirst() * in;
                second[i] = filter.steadySecond() * in;
            }
            double out = filter.b0() * in + first[i];
            first[i] = filter.b1() * in - filter.a1() * out + second[i];
            second[i] = filter.b2() * in - filter.a2() * out;
            values[i] = out;
        }
        started = true;
    }
}
