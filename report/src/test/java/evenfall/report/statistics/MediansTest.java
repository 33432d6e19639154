package evenfall.report.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MediansTest {

    /** Binomial: with six values both extremes hold the median with 1 - 2/64 = 97 %, with five only 94 %. */
    @Test
    void anInterval_needsSixValues() {
        assertThat(Medians.interval(new double[] {5, 1, 4, 2, 3})).isNull();
        Interval six = Objects.requireNonNull(Medians.interval(new double[] {5, 1, 4, 2, 3, 6}));
        assertThat(six.low()).isBetween(1.0, 1.5);
        assertThat(six.high()).isBetween(5.5, 6.0);
    }

    /** Binomial tables: for n = 20 the 6th and 15th of the ordered values hold the median with 95.9 % (from memory). */
    @Test
    void theIntervalOfTwentyValues_liesJustInsideTheSixthAndFifteenth() {
        double[] values = new double[20];
        Arrays.setAll(values, i -> 20 - i);
        Interval interval = Objects.requireNonNull(Medians.interval(values));

        assertThat(interval.low()).isBetween(6.0, 6.3);
        assertThat(interval.high()).isBetween(14.7, 15.0);
        assertThat(Medians.of(values)).isEqualTo(10.5);
    }

    /** Skewed values (exponential, median ln 2): 95 in 100, within two and a half standard deviations of drawing 4000. */
    @ParameterizedTest
    @ValueSource(ints = {6, 7, 9, 12, 20, 41})
    void intervals_holdTheMedian95TimesIn100(int n) {
        SplittableRandom random = new SplittableRandom(n);
        int draws = 4000;
        int held = 0;
        for (int k = 0; k < draws; k++) {
            double[] values = new double[n];
            Arrays.setAll(values, i -> -Math.log(1 - random.nextDouble()));
            Interval interval = Objects.requireNonNull(Medians.interval(values));
            held += interval.low() <= Math.log(2) && Math.log(2) <= interval.high() ? 1 : 0;
        }
        assertThat((double) held / draws).isBetween(0.94, 0.965);
    }

    @Test
    void median_leavesTheValuesInTheirOrder() {
        double[] values = {5, 1, 4, 2, 3, 9, 0, 8};
        Medians.of(values);

        assertThat(values).containsExactly(5, 1, 4, 2, 3, 9, 0, 8);
    }

    /** 5.1 5.3 4.9 5.0 9.8 5.2 has median 5.15 and median distance 0.15; worked by hand. */
    @Test
    void spread_isTheMedianDistanceTimesAConstant() {
        double[] values = {5.1, 5.3, 4.9, 5.0, 9.8, 5.2};

        assertThat(Medians.of(values)).isCloseTo(5.15, within(1e-12));
        assertThat((9.8 - 5.15) / Medians.spread(values, 5.15)).isCloseTo(20.9092, within(1e-4));
    }
}
