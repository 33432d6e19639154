package evenfall.fusion.landing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Worked values: cases H6 and H7 of the reference sheet. */
final class StabilisationTest {

    /** A cosine of 3 Hz that dies away round body weight: 500 samples at 100 Hz. */
    @Test
    void dampedCosine_isCaseH6() {
        double[] t = times(500, 100);
        double[] force = of(t, s -> 1 + 0.8 * Math.exp(-s / 0.25) * Math.cos(2 * Math.PI * 3 * s));

        assertThat(Stabilisation.withinBand(t, force, 1, 0.05, 1)).isCloseTo(0.69, within(0.01));
        assertThat(Stabilisation.ofRunningMean(t, force)).isCloseTo(0.50, within(0.005));
    }

    @Test
    void envelope_isCaseH7() {
        double[] t = times(3000, 1000);
        double[] force = of(t, s -> 1 + Math.exp(-s / 0.3));

        assertThat(Stabilisation.withinBand(t, force, 1, 0.05, 1)).isCloseTo(0.898720, within(1e-6));
    }

    @Test
    void signalThatIsNotSeenToStay_hasNoTime() {
        double[] t = times(180, 100);
        double[] force = of(t, s -> 1 + Math.exp(-s / 0.3));

        assertThat(Stabilisation.withinBand(t, force, 1, 0.05, 1)).isNull();
        assertThat(Stabilisation.withinBand(t, of(t, s -> 2), 1, 0.05, 1)).isNull();
        assertThat(Stabilisation.withinBand(t, of(t, s -> 1), 1, 0.05, 1)).isZero();
    }

    private static double[] times(int n, double rateHz) {
        double[] t = new double[n];
        for (int i = 0; i < n; i++) {
            t[i] = i / rateHz;
        }
        return t;
    }

    private static double[] of(double[] t, DoubleUnaryOperator force) {
        double[] values = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            values[i] = force.applyAsDouble(t[i]);
        }
        return values;
    }
}
