package evenfall.report.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.SplittableRandom;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BrokenStickTest {

    private static final double[] VALUES = {3.0, 3.1, 2.9, 3.2, 3.0, 3.1, 3.3, 3.8, 4.1, 4.6, 4.9, 5.5, 5.8, 6.3};

    /** The method of Muggeo 2003 (Statistics in Medicine 22:3055), counted out by a general-purpose program on a grid of 0.01. */
    @Test
    void fourteenPoints_bendWhereTheReferenceSays() {
        BrokenStick stick = Objects.requireNonNull(BrokenStick.of(times(14), VALUES));

        assertThat(stick.at()).isCloseTo(6.4898, within(0.0005));
        assertThat(stick.level()).isCloseTo(2.999970, within(2e-4));
        assertThat(stick.before()).isCloseTo(0.014298, within(1e-4));
        assertThat(stick.after() - stick.before()).isCloseTo(0.408328, within(1e-4));
        assertThat(stick.squares()).isCloseTo(0.0786905, within(1e-6));
        assertThat(stick.chance()).isEqualTo(0.0005);
    }

    /** At the bend found, least squares of a general-purpose library give the same line. */
    @Test
    void atItsBend_itIsTheLineOfLeastSquares() {
        BrokenStick stick = Objects.requireNonNull(BrokenStick.of(times(14), VALUES));
        double[][] x = new double[14][];
        for (int i = 0; i < x.length; i++) {
            x[i] = new double[] {i + 1, Math.max(0, i + 1 - stick.at())};
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.newSampleData(VALUES, x);
        double[] b = regression.estimateRegressionParameters();

        assertThat(stick.level()).isCloseTo(b[0], within(1e-9));
        assertThat(stick.before()).isCloseTo(b[1], within(1e-9));
        assertThat(stick.after()).isCloseTo(b[1] + b[2], within(1e-9));
        assertThat(stick.squares()).isCloseTo(regression.calculateResidualSumOfSquares(), within(1e-9));
    }

    /**
     * Straight lines, uneven times: as rarely taken for bent as is said, within two and a half standard
     * deviations of drawing 500 here and 1999 there.
     */
    @ParameterizedTest
    @ValueSource(ints = {6, 8, 14})
    void straightLines_seemBent5TimesIn100(int n) {
        SplittableRandom random = new SplittableRandom(n);
        int called = 0;
        for (int k = 0; k < 500; k++) {
            double[] time = new double[n];
            double[] value = new double[n];
            for (int i = 0; i < n; i++) {
                time[i] = i + 0.6 * random.nextDouble();
                value[i] = 7 - 0.3 * time[i] + normal(random);
            }
            called += Objects.requireNonNull(BrokenStick.of(time, value)).chance() <= 0.05 ? 1 : 0;
        }
        assertThat(called).isBetween(12, 38);
    }

    @Test
    void withoutThreePointsOnASide_orWithoutScatter_thereIsNone() {
        assertThat(BrokenStick.of(times(5), new double[] {1, 2, 1, 2, 1})).isNull();
        assertThat(BrokenStick.of(new double[] {0, 1, 2, 2, 2, 3}, new double[] {1, 2, 1, 2, 1, 4}))
                .isNull();
        assertThat(BrokenStick.of(times(8), times(8))).isNull();
    }

    private static double[] times(int n) {
        double[] times = new double[n];
        for (int i = 0; i < n; i++) {
            times[i] = i + 1;
        }
        return times;
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
