package evenfall.fusion.filtering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Filtered sequences against the reference sheet's section 3.2 (SciPy lfilter and filtfilt there). */
class ZeroPhaseTest {

    private static final double PRINTED = 6e-7;
    private static final double[] X = {1, 1, 0.2, 0, 0, 0.1, 3, 9, 14, 8, 4, 3, 2.2, 1.5, 1.1, 0.9, 1, 1, 1, 1};

    @Test
    void oneWayFromRest() {
        // G12
        Biquad filter = Butterworth.lowPass(50, 200);
        assertThat(filter.filter(X))
                .containsExactly(
                        new double[] {
                            0.292893, 0.878680, 0.887006, 0.259293, -0.093607, -0.015198, 0.953319, 4.425295, 10.087699,
                            12.420934, 8.227594, 3.433876, 2.161665, 2.017590, 1.474344, 1.001145, 0.889326, 0.970514,
                            1.018989, 1.005059
                        },
                        within(PRINTED));
        assertThat(filter.steadyFirst()).isCloseTo(0.707107, within(PRINTED));
        assertThat(filter.steadySecond()).isCloseTo(0.121320, within(PRINTED));
    }

    @Test
    void bothWaysAtFiftyHertz() {
        // G13
        assertThat(ZeroPhase.filter(Butterworth.lowPass(50, 200), X))
                .containsExactly(
                        new double[] {
                            1.000177, 0.783000, 0.416960, -0.014333, -0.401938, 0.252996, 3.794668, 9.296354, 11.833929,
                            9.018880, 4.701756, 2.590369, 2.055537, 1.588909, 1.115020, 0.926176, 0.954342, 1.004034,
                            1.008928, 0.999621
                        },
                        within(PRINTED));
    }

    @Test
    void bothWaysAtTwentyHertz() {
        // G14
        assertThat(ZeroPhase.filter(Butterworth.lowPass(20, 200), X))
                .containsExactly(
                        new double[] {
                            1.003056, 0.588512, 0.395031, 0.635600, 1.483605, 2.967709, 4.838513, 6.527212, 7.381673,
                            7.106225, 5.955592, 4.463391, 3.071127, 2.000796, 1.304499, 0.936176, 0.804622, 0.812315,
                            0.880605, 0.957498
                        },
                        within(PRINTED));
    }

    @Test
    void bothWaysInAChannelClass() {
        // G15
        double[] y = ZeroPhase.filter(ChannelClass.CFC_60.design(400), X);
        assertThat(y[8])
                .isCloseTo(12.708328, within(PRINTED))
                .isEqualTo(Arrays.stream(y).max().orElseThrow());
        assertThat(y[0]).isCloseTo(0.999396, within(PRINTED));
        assertThat(y[19]).isCloseTo(1.000486, within(PRINTED));
    }

    @ParameterizedTest
    @CsvSource({
        "20, 10, 2.740", "20, 20, 5.073", "20, 50, 8.923", "20, 100, 9.974",
        "40, 10, 5.073", "40, 20, 8.105", "40, 50, 9.974", "40, 100, 9.997"
    })
    void aShortPulseLosesItsPeak(double pulseMs, double cutoff, double expected) {
        // G16: a 10 g half-sine, densely sampled
        double rate = 20000;
        double[] x = new double[(int) rate];
        int n = (int) Math.round(pulseMs / 1000 * rate);
        for (int i = 0; i <= n; i++) {
            x[x.length / 2 + i] = 10 * Math.sin(Math.PI * i / n);
        }
        double[] y = ZeroPhase.filter(Butterworth.lowPass(cutoff, rate), x);
        assertThat(Arrays.stream(y).max().orElseThrow()).isCloseTo(expected, within(0.01));
    }

    @Test
    void nothingIsShiftedInTime() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < 100; i++) {
            double rate = random.nextDouble(50, 400);
            double cutoff = rate * random.nextDouble(0.05, 0.3);
            double hertz = cutoff * random.nextDouble(0.1, 1);
            double phase = random.nextDouble(6);
            Biquad filter = Butterworth.twoPassLowPass(cutoff, rate);
            double[] x = new double[2000];
            for (int k = 0; k < x.length; k++) {
                x[k] = Math.sin(2 * Math.PI * hertz * k / rate + phase);
            }
            double[] y = ZeroPhase.filter(filter, x);
            double gain = Math.pow(filter.gain(hertz, rate), 2);
            for (int k = 900; k < 1100; k++) {
                assertThat(y[k]).as("seed 12, draw %d", i).isCloseTo(gain * x[k], within(1e-6));
            }
        }
    }

    @Test
    void straightLinesAndConstantsStayAsTheyAre() {
        Biquad filter = Butterworth.lowPass(20, 200);
        double[] line = new double[60];
        for (int i = 0; i < line.length; i++) {
            line[i] = 3 - 0.25 * i;
        }
        double[] flat = new double[60];
        Arrays.fill(flat, -7);
        assertThat(ZeroPhase.filter(filter, flat)).containsExactly(flat, within(1e-9));
        double[] filtered = ZeroPhase.filter(filter, line);
        for (int i = 25; i < 35; i++) {
            assertThat(filtered[i]).isCloseTo(line[i], within(1e-3));
        }
    }

    @Test
    void veryShortSignalsAreFilteredAsFarAsTheyGo() {
        Biquad filter = Butterworth.lowPass(20, 200);
        assertThat(ZeroPhase.filter(filter, new double[0])).isEmpty();
        assertThat(ZeroPhase.filter(filter, new double[] {4})).containsExactly(4);
        assertThat(ZeroPhase.filter(filter, new double[] {4, 4, 4}))
                .containsExactly(new double[] {4, 4, 4}, within(1e-9));
    }
}
