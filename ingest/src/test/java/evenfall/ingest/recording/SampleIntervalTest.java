package evenfall.ingest.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The truth is the rate the time stamps were made with. */
class SampleIntervalTest {

    private static final long SEED = 20260302;

    @ParameterizedTest
    @ValueSource(doubles = {50, 99.7, 200, 285.714, 400, 800, 951.3, 1600})
    void rateIsFoundUnderJitterLossAndGaps(double rate) {
        SplittableRandom random = new SplittableRandom(SEED);
        double[] time = new double[20_000];
        double at = 0;
        for (int i = 0; i < time.length; i++) {
            time[i] = at / rate + random.nextDouble(-0.1, 0.1) / rate;
            at += random.nextInt(50) == 0 ? 2 : random.nextInt(4000) == 0 ? 40 : 1;
        }

        assertThat(1 / SampleInterval.of(time)).as("seed %d", SEED).isCloseTo(rate, within(0.002 * rate));
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 99.7, 200, 285.714, 400, 800, 951.3, 1600})
    void rateIsFoundFromWholeMilliseconds(double rate) {
        double[] time = new double[20_000];
        for (int i = 0; i < time.length; i++) {
            time[i] = Math.rint(1000 * i / rate) / 1000 + (i > 7000 ? 3 : 0);
        }

        assertThat(1 / SampleInterval.of(time)).isCloseTo(rate, within(0.005 * rate));
    }

    @Test
    void rateIsFoundWhenSamplesArriveInPackets() {
        double[] time = new double[4000];
        for (int i = 0; i < time.length; i++) {
            int packet = i / 8;
            time[i] = packet * 0.04;
        }

        assertThat(1 / SampleInterval.of(time)).isCloseTo(200, within(0.5));
    }

    @Test
    void evenStampsWithLostSamplesKeepTheirRate() {
        SplittableRandom random = new SplittableRandom(SEED);
        double[] time = new double[5000];
        int at = 0;
        for (int i = 0; i < time.length; i++) {
            time[i] = at * 0.01;
            at += random.nextInt(12) == 0 ? 2 : 1;
        }

        assertThat(1 / SampleInterval.of(time)).as("seed %d", SEED).isCloseTo(100, within(0.01));
    }

    @Test
    void aSingleSampleAndAStoppedClockHaveNoInterval() {
        assertThat(SampleInterval.of(new double[] {3})).isZero();
        double[] stopped = new double[500];
        Arrays.fill(stopped, 7);
        assertThat(SampleInterval.of(stopped)).isZero();
    }

    @Test
    void aFewSamplesAreEnough() {
        assertThat(SampleInterval.of(new double[] {0, 0.01, 0.02, 0.03})).isCloseTo(0.01, within(1e-12));
    }
}
