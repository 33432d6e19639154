package evenfall.fusion.filtering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Designs against the reference sheet's sections 2.4, 3.1 and 3.2 (SciPy there) and a general filter library. */
class ButterworthTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "F5, 3, 100, 5.53708837461e-6, -1.9933333579, 0.993355506255",
        "F6, 3, 200, 1.38657728588e-6, -1.99666666975, 0.996672216055",
        "F7, 0.5, 200, 4.95041417559e-5, -1.98000065676, 0.980198673326"
    })
    void timeConstants(String id, double seconds, double rate, double b0, double a1, double a2) {
        Biquad filter = Butterworth.ofTimeConstant(seconds, rate);
        assertThat(filter.b0()).isCloseTo(b0, within(1e-11 * Math.abs(b0)));
        assertThat(filter.b1()).isEqualTo(2 * filter.b0());
        assertThat(filter.b2()).isEqualTo(filter.b0());
        assertThat(filter.a1()).isCloseTo(a1, within(1e-11));
        assertThat(filter.a2()).isCloseTo(a2, within(1e-11));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "G6, 20, 200, 0.0674552739, -1.1429805025, 0.4128015981",
        "G7, 50, 200, 0.2928932188, 0, 0.1715728753",
        "G8, 50, 400, 0.0976310729, -0.9428090416, 0.3333333333",
        "G9, 50, 1000, 0.0200833656, -1.5610180758, 0.6413515381"
    })
    void onePass(String id, double cutoff, double rate, double b0, double a1, double a2) {
        same(Butterworth.lowPass(cutoff, rate), b0, a1, a2);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "G10, 20, 200, 24.498481, 0.0944467439, -0.9626413088, 0.3404282844",
        "G11, 50, 200, 56.957673, 0.3599533788, 0.2565789058, 0.1832346095"
    })
    void twoPassesAreThreeDecibelsDownAtTheCutOff(
            String id, double cutoff, double rate, double design, double b0, double a1, double a2) {
        Biquad filter = Butterworth.twoPassLowPass(cutoff, rate);
        same(filter, b0, a1, a2);
        assertThat(Butterworth.twoPassDesignHz(cutoff, rate)).isCloseTo(design, within(1e-6));
        assertThat(40 * Math.log10(filter.gain(cutoff, rate))).isCloseTo(-3.0103, within(5e-5));
        assertThat(Butterworth.TWO_PASS_FACTOR).isCloseTo(0.802243, within(5e-7));
    }

    @Test
    void anyDesignIsThreeDecibelsDownAtItsCutOffAndLetsConstantsThrough() {
        SplittableRandom random = new SplittableRandom(31);
        for (int i = 0; i < 300; i++) {
            double rate = random.nextDouble(20, 2000);
            double cutoff = rate * random.nextDouble(0.001, 0.499);
            Biquad once = Butterworth.lowPass(cutoff, rate);
            Biquad twice = Butterworth.twoPassLowPass(cutoff, rate);
            assertThat(once.gain(cutoff, rate)).as("seed 31, draw %d", i).isCloseTo(Math.sqrt(0.5), within(1e-8));
            assertThat(Math.pow(twice.gain(cutoff, rate), 2)).as("draw %d", i).isCloseTo(Math.sqrt(0.5), within(1e-8));
            assertThat(once.constantGain()).as("draw %d", i).isCloseTo(1, within(1e-8));
        }
    }

    @Test
    void oneWayOutputAgreesWithAGeneralFilterLibrary() {
        SplittableRandom random = new SplittableRandom(77);
        for (int i = 0; i < 50; i++) {
            double rate = random.nextDouble(50, 1600);
            double cutoff = rate * random.nextDouble(0.01, 0.45);
            uk.me.berndporr.iirj.Butterworth oracle = new uk.me.berndporr.iirj.Butterworth();
            oracle.lowPass(2, rate, cutoff);
            double[] x = random.doubles(200, -10, 10).toArray();
            double[] y = Butterworth.lowPass(cutoff, rate).filter(x);
            for (int k = 0; k < x.length; k++) {
                assertThat(y[k]).as("seed 77, draw %d, sample %d", i, k).isCloseTo(oracle.filter(x[k]), within(1e-11));
            }
        }
    }

    @Test
    void cutOffsThatCannotBeHadAreRefused() {
        assertThatThrownBy(() -> Butterworth.lowPass(100, 200)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Butterworth.lowPass(0, 200)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Butterworth.twoPassLowPass(Double.NaN, 200))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static void same(Biquad filter, double b0, double a1, double a2) {
        assertThat(new double[] {filter.b0(), filter.b1(), filter.b2(), filter.a1(), filter.a2()})
                .containsExactly(new double[] {b0, 2 * b0, b0, a1, a2}, within(1.5e-10));
    }
}
