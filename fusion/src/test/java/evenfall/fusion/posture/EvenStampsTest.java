package evenfall.fusion.posture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Samples taken evenly, their stamps spoilt as sensors and radios do, checked against when they were taken. */
class EvenStampsTest {

    private static final double T = 0.005;
    private static final int N = 1200;
    private static final double START = 31;

    private final SplittableRandom random = new SplittableRandom(4);

    @ParameterizedTest
    @ValueSource(doubles = {0.0002, 0.001, 0.002})
    void jitter_isTakenOut(double jitter) {
        double[] stamps = stamps(i -> i * T + even(jitter));
        EvenStamps.even(stamps, T);
        // A line through n errors is off by up to 2 / √n of one at its ends: here a seventeenth.
        for (int i = 0; i < N; i++) {
            assertThat(stamps[i] - START).isCloseTo(i * T, within(2.5 * jitter / 17));
        }
    }

    /** The scatter is larger than an interval, and still no time is missing. */
    @Test
    void jitterOfMoreThanAnInterval_breaksNothing() {
        double interval = 0.00125;
        for (int round = 0; round < 20; round++) {
            double[] stamps = stamps(i -> i * interval + even(0.002));
            EvenStamps.even(stamps, interval);
            assertThat(scatter(stamps, i -> i * interval)).isLessThan(0.2 * interval);
        }
    }

    @Test
    void samplesThatComeSeveralAtOnce_areSpread() {
        double[] stamps = stamps(i -> i / 4 * 4 * T);
        EvenStamps.even(stamps, T);
        assertThat(scatter(stamps, i -> i * T)).isLessThan(0.01 * T);
    }

    @Test
    void samplesThatComeSeveralAtOnceAndLate_areSpread() {
        double[] late = random.doubles(N, 0, 3 * T).toArray();
        double[] stamps = stamps(i -> i / 4 * 4 * T + late[i / 4]);
        EvenStamps.even(stamps, T);
        assertThat(scatter(stamps, i -> i * T)).isLessThan(0.1 * T);
    }

    @Test
    void aPacketThatIsLost_staysMissing() {
        double[] late = random.doubles(N, 0, T).toArray();
        IntToDoubleFunction taken = i -> (i + (i < 600 ? 0 : 4)) * T;
        double[] stamps = stamps(i -> taken.applyAsDouble(i / 4 * 4) + late[i / 4]);
        EvenStamps.even(stamps, T);
        assertThat(stamps[600] - stamps[599]).isCloseTo(5 * T, within(0.2 * T));
        assertThat(scatter(stamps, taken)).isLessThan(0.1 * T);
    }

    @Test
    void fewSamplesBetweenGaps_keepTheInterval() {
        int last = 610;
        double[] stamps = stamps(i -> (i + (i < 600 ? 0 : 7) + (i < last ? 0 : 7)) * T + even(0.0004));
        EvenStamps.even(stamps, T);
        for (int i = 601; i < last; i++) {
            assertThat(stamps[i] - stamps[i - 1]).isCloseTo(T, within(1e-9));
        }
    }

    @Test
    void stampsThatStandStill_stayAsTheyAre() {
        double[] stamps = {START, START, START};
        EvenStamps.even(stamps, Double.POSITIVE_INFINITY);
        assertThat(stamps).containsExactly(START, START, START);
    }

    @Test
    void roundedStamps_areEven() {
        double[] stamps = stamps(i -> Math.rint(i * T * 100) / 100);
        EvenStamps.even(stamps, T);
        assertThat(scatter(stamps, i -> i * T)).isLessThan(0.03 * T);
    }

    @Test
    void aClockThatRunsFast_isKept() {
        double[] stamps = stamps(i -> i * T * 1.0002);
        EvenStamps.even(stamps, T);
        assertThat(stamps[N - 1] - stamps[0]).isCloseTo((N - 1) * T * 1.0002, within(1e-9));
    }

    @Test
    void missingTime_staysWhereItWas() {
        IntToDoubleFunction taken = i -> (i + (i < 600 ? 0 : 1) + (i < 900 ? 0 : 15) + (i < 910 ? 0 : 6)) * T;
        double[] stamps = stamps(i -> taken.applyAsDouble(i) + even(0.0002));
        EvenStamps.even(stamps, T);
        assertThat(stamps[600] - stamps[599]).isCloseTo(2 * T, within(0.0001));
        assertThat(stamps[900] - stamps[899]).isCloseTo(16 * T, within(0.0002));
        // Ten samples between two gaps: their mean tells when.
        assertThat(stamps[910] - stamps[909]).isCloseTo(7 * T, within(0.0002));
        assertThat(scatter(stamps, taken)).isLessThan(0.00003);
    }

    /** A radio that loses single samples every now and then: each is told, whether stamps jitter or not. */
    @ParameterizedTest
    @CsvSource({"0.01, 0", "0.02, 0", "0.05, 0", "0.1, 0", "0.02, 0.0002", "0.05, 0.0002", "0.05, 0.0005"})
    void samplesLostOneByOne_stayMissing(double lost, double jitter) {
        double[] taken = new double[N];
        for (int i = 1; i < N; i++) {
            taken[i] = taken[i - 1] + T;
            while (random.nextDouble() < lost) {
                taken[i] += T;
            }
        }
        double[] stamps = stamps(i -> taken[i] + even(jitter));
        EvenStamps.even(stamps, T);
        assertThat(scatter(stamps, i -> taken[i])).isLessThan(0.001 * T + jitter);
    }

    @Test
    void times_neverGoBack() {
        for (int round = 0; round < 300; round++) {
            double[] stamps = new double[random.nextInt(1, 80)];
            double now = 0;
            for (int i = 0; i < stamps.length; i++) {
                now += random.nextInt(4) == 0 ? random.nextDouble(0.1) : random.nextInt(3) * T;
                stamps[i] = now;
            }
            double[] even = stamps.clone();
            EvenStamps.even(even, T);
            assertThat(even).as(() -> Arrays.toString(stamps)).isSorted().doesNotContain(Double.NaN);
        }
    }

    @Test
    void oneSample_staysAsItIs() {
        double[] stamps = {START};
        EvenStamps.even(stamps, T);
        assertThat(stamps).containsExactly(START);
    }

    /** Evenly about 0 with this standard deviation. */
    private double even(double sigma) {
        return sigma * Math.sqrt(3) * random.nextDouble(-1, 1);
    }

    private static double[] stamps(IntToDoubleFunction time) {
        double[] stamps = new double[N];
        for (int i = 0; i < N; i++) {
            stamps[i] = Math.max(i == 0 ? START : stamps[i - 1], START + time.applyAsDouble(i));
        }
        return stamps;
    }

    /** Standard deviation of stamps less when the samples were taken, s. */
    private static double scatter(double[] stamps, IntToDoubleFunction taken) {
        DescriptiveStatistics late = new DescriptiveStatistics();
        for (int i = 0; i < stamps.length; i++) {
            late.addValue(stamps[i] - taken.applyAsDouble(i));
        }
        return late.getStandardDeviation();
    }
}
