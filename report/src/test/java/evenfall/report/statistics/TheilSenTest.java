package evenfall.report.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.SplittableRandom;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TheilSenTest {

    /** Slope 0.1 with 95 % from 0.05 to 0.15: Sen 1968, counted out by a general-purpose program. */
    @Test
    void twelvePoints_giveTheReferenceSlopeAndInterval() {
        double[] y = {4.1, 4.4, 4.0, 4.6, 4.5, 4.9, 4.4, 5.0, 5.2, 4.8, 5.3, 5.1};
        double[] t = new double[12];
        for (int i = 0; i < 12; i++) {
            t[i] = i + 1;
        }
        TheilSen fit = TheilSen.of(t, y);

        assertThat(fit.slope()).isCloseTo(0.1, within(1e-6));
        Interval interval = Objects.requireNonNull(fit.interval());
        // Whole ranks give 0.05 and 0.15; between ranks the interval may be a little narrower, never wider.
        assertThat(interval.low()).isBetween(0.05 - 1e-9, 0.06);
        assertThat(interval.high()).isBetween(0.14, 0.15 + 1e-9);
    }

    /** With four points the most extreme orders hold 2/24 > 5 %: least squares and Student's t stand in. */
    @Test
    void fourPoints_takeTheIntervalOfLeastSquares() {
        double[] t = {0, 1, 2, 3};
        double[] y = {1, 2.1, 2.8, 4.2};
        SimpleRegression line = new SimpleRegression(true);
        for (int i = 0; i < 4; i++) {
            line.addData(t[i], y[i]);
        }
        Interval interval = Objects.requireNonNull(TheilSen.of(t, y).interval());

        assertThat((interval.high() - interval.low()) / 2)
                .isCloseTo(line.getSlopeConfidenceInterval(0.05), within(1e-9));
    }

    @Test
    void threePoints_giveASlopeButNoInterval() {
        TheilSen fit = TheilSen.of(new double[] {0, 1, 2}, new double[] {1, 2, 3});

        assertThat(fit.slope()).isEqualTo(1);
        assertThat(fit.interval()).isNull();
    }

    /** Uneven times, normal scatter: 95 in 100, within two and a half standard deviations of drawing 2000. */
    @ParameterizedTest
    @ValueSource(ints = {4, 5, 6, 8, 12, 25})
    void intervals_holdTheSlope95TimesIn100(int n) {
        SplittableRandom random = new SplittableRandom(n);
        int draws = 2000;
        int held = 0;
        for (int k = 0; k < draws; k++) {
            double[] t = new double[n];
            double[] y = new double[n];
            for (int i = 0; i < n; i++) {
                t[i] = i + 0.5 * random.nextDouble();
                y[i] = 0.7 * t[i] + normal(random);
            }
            Interval interval = Objects.requireNonNull(TheilSen.of(t, y).interval());
            held += interval.low() <= 0.7 && 0.7 <= interval.high() ? 1 : 0;
        }
        assertThat((double) held / draws).isBetween(0.938, 0.968);
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
