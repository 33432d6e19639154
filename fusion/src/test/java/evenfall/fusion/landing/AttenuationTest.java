package evenfall.fusion.landing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Worked values: cases H8 and H9 of the reference sheet, and closed forms. */
final class AttenuationTest {

    @Test
    void peaks_areCaseH8() {
        assertThat(Attenuation.percent(8.0, 4.6)).isCloseTo(42.5, within(1e-9));
        assertThat(Attenuation.percent(4, 5)).as("more arrives above").isCloseTo(-25, within(1e-9));
    }

    @Test
    void sines_areCaseH9() {
        double[] below = sines(4, 1);
        double[] above = sines(2, 1.1);

        assertThat(Attenuation.decibels(below, above, 200, 14, 16)).isCloseTo(-6.0206, within(1e-3));
        assertThat(Attenuation.decibels(below, above, 200, 4, 6)).isCloseTo(0.8279, within(1e-3));
    }

    /** A constant added, as gravity is, carries no power of any frequency. */
    @Test
    void steadyPart_doesNotCount() {
        double[] below = sines(4, 0);
        double[] above = sines(2, 0);
        for (int i = 0; i < above.length; i++) {
            above[i] += 7;
        }
        assertThat(Attenuation.decibels(below, above, 200, 10, 20)).isCloseTo(-6.0206, within(1e-3));
    }

    @Test
    void silence_hasNoRatio() {
        assertThat(Attenuation.decibels(new double[100], sines(2, 1), 200, 10, 20))
                .isNaN();
        assertThat(Attenuation.decibels(sines(2, 1), new double[100], 200, 10, 20))
                .isNaN();
    }

    /** Ten seconds at 200 Hz: whole periods of both. */
    private static double[] sines(double at15Hz, double at5Hz) {
        double[] signal = new double[2000];
        for (int i = 0; i < signal.length; i++) {
            double t = i / 200.0;
            signal[i] = at15Hz * Math.sin(2 * Math.PI * 15 * t) + at5Hz * Math.sin(2 * Math.PI * 5 * t);
        }
        return signal;
    }
}
