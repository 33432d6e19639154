package evenfall.fusion.orientation;

import evenfall.fusion.filtering.Biquad;

/**
 * One low-pass run over several signals at once, which starts as a running mean and goes over into the steady state of
 * that mean (Laidig and Seel 2023, their filter start).
 */
final class LowPassBank {

    private final Biquad filter;
    private final int startSamples;
    private final double[] mean;
    private final double[] first;
    private final double[] second;
    private double weight;

    LowPassBank(Biquad filter, int startSamples, int signals) {
        this.filter = filter;
        this.startSamples = startSamples;
        this.mean = new double[signals];
        this.first = new double[signals];
        this.second = new double[signals];
    }

    /**
     * Goes back to a running mean that begins at {@code known} as if that were the mean of {@code samples} samples;
     * nothing happens where the filter holds less than that already.
     */
    void restart(double[] known, double samples) {
        if (samples < weight) {
            System.arraycopy(known, 0, mean, 0, mean.length);
            weight = samples;
        }
    }

    /** Filters one value of each signal in place. */
    void filter(double[] values) {
        if (weight < startSamples) {
            start(values);
            return;
        }
        double b0 = filter.b0();
        double b1 = filter.b1();
        double b2 = filter.b2();
        double a1 = filter.a1();
        double a2 = filter.a2();
        for (int i = 0; i < values.length; i++) {
            double in = values[i];
            double out = b0 * in + first[i];
            first[i] = b1 * in - a1 * out + second[i];
            second[i] = b2 * in - a2 * out;
            values[i] = out;
        }
    }

    private void start(double[] values) {
        weight++;
        for (int i = 0; i < values.length; i++) {
            mean[i] += (values[i] - mean[i]) / weight;
            values[i] = mean[i];
        }
        if (weight >= startSamples) {
            for (int i = 0; i < values.length; i++) {
                first[i] = filter.steadyFirst() * mean[i];
                second[i] = filter.steadySecond() * mean[i];
            }
        }
    }
}
