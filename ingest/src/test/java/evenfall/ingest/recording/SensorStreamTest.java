package evenfall.ingest.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes into a stream comes out of it; the truth is what was put in. */
class SensorStreamTest {

    private static final long SEED = 99;
    private static final double MICROSECOND = 1e-6;

    @Test
    void samplesComeOutAsTheyWentIn() {
        SplittableRandom random = new SplittableRandom(SEED);
        int n = 50_000;
        double[] time = new double[n];
        float[][] values = new float[n][6];
        SensorStream.Builder builder = new SensorStream.Builder();
        double at = 1.7e9;
        for (int i = 0; i < n; i++) {
            // Now and then a pause longer than a block of compact times can hold.
            at += i % 10_007 == 10_006 ? 5000 : random.nextDouble(0.01);
            time[i] = at;
            for (int c = 0; c < 6; c++) {
                values[i][c] = (float) random.nextDouble(-200, 200);
            }
            float[] v = values[i];
            builder.add(at, v[0], v[1], v[2], v[3], v[4], v[5]);
        }
        SensorStream stream = builder.build();
        assertThat(stream.size()).isEqualTo(n);
        assertThat(stream.clockStartS()).isEqualTo(time[0]);
        assertThat(stream.gaps()).hasSize(4);
        for (int i = 0; i < n; i++) {
            double worst = Math.abs(stream.time(i) - (time[i] - time[0]));
            if (worst > MICROSECOND || (i > 0 && stream.time(i) < stream.time(i - 1))) {
                assertThat(worst).as("seed %d, sample %d", SEED, i).isLessThan(MICROSECOND);
                assertThat(stream.time(i)).as("order").isGreaterThanOrEqualTo(stream.time(i - 1));
            }
            double[] read = {stream.ax(i), stream.ay(i), stream.az(i), stream.gx(i), stream.gy(i), stream.gz(i)};
            for (int c = 0; c < 6; c++) {
                if (read[c] != values[i][c]) {
                    assertThat(read[c]).as("seed %d, sample %d", SEED, i).isEqualTo(values[i][c]);
                }
            }
        }
    }

    @Test
    void samplesThatComeTogetherLeaveNoGapButWhereMuchIsMissing() {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 400; i++) {
            int packet = i / 4 + (i < 200 ? 0 : 3);
            builder.add(packet * 0.02, 0, 0, 9.8, 0, 0, 0);
        }
        assertThat(builder.soFar().gaps()).isEqualTo(builder.build().gaps());
        assertThat(builder.build().gaps()).containsExactly(new Gap(199, 0.98, 1.06));
    }

    /** A radio that hands over what has gathered stamps it when it does, or when it began to gather. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void packetsOfUnlikeSizesLeaveNoGapButWhereMuchIsMissing_asTheyGrowToo(boolean stampedAtTheEnd) {
        SplittableRandom random = new SplittableRandom(SEED);
        SensorStream.Builder builder = new SensorStream.Builder();
        int sample = 0;
        double lostS = 0;
        while (sample < 4000) {
            int packet = random.nextInt(1, 9);
            lostS += sample < 2000 && sample + packet >= 2000 ? 0.5 : 0;
            double stamp = lostS + (stampedAtTheEnd ? sample + packet : sample) / 200.0;
            for (int k = 0; k < packet; k++) {
                builder.add(stamp, 0, 0, 9.8, 0, 0, 0);
                if (random.nextInt(5) == 0) {
                    builder.soFar();
                }
            }
            sample += packet;
        }

        List<Gap> gaps = builder.build().gaps();
        assertThat(gaps).as("seed %d", SEED).hasSize(1);
        assertThat(gaps.get(0).lengthS()).isBetween(0.5, 0.6);
        assertThat(builder.soFar().gaps()).isEqualTo(gaps);
    }

    @Test
    void decimalTimesComeOutExactly() {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 10_000; i++) {
            builder.add(i * 5 / 1000.0, 0, 0, 9.8, 0, 0, 0);
        }
        SensorStream stream = builder.build();
        for (int i = 0; i < 10_000; i++) {
            assertThat(stream.time(i) == i * 5 / 1000.0).isTrue();
        }
        assertThat(stream.indexAtOrBefore(12.3449)).isEqualTo(2468);
        assertThat(stream.indexAtOrBefore(12.345)).isEqualTo(2469);
        assertThat(stream.indexAtOrBefore(-1)).isEqualTo(-1);
        assertThat(stream.indexAtOrBefore(1e9)).isEqualTo(9999);
    }

    @Test
    void aBuiltStreamDoesNotChangeWhenTheBuilderGoesOn() {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 10; i++) {
            builder.add(i * 0.01, i, 0, 0, 0, 0, 0);
        }
        SensorStream first = builder.build();
        builder.add(4000, 99, 0, 0, 0, 0, 0);
        assertThat(first.size()).isEqualTo(10);
        assertThat(first.time(9)).isEqualTo(0.09);
        assertThat(first.durationS()).isEqualTo(0.09);
        assertThat(builder.build().time(10)).isEqualTo(4000);
    }

    @Test
    void backwardTimesAndNumbersThatAreNoneAreRefused() {
        SensorStream.Builder builder = new SensorStream.Builder().add(5, 0, 0, 0, 0, 0, 0);
        assertThatThrownBy(() -> builder.add(4.999, 0, 0, 0, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.add(Double.NaN, 0, 0, 0, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.add(6, 0, 0, 1e300, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SensorStream.Builder().build()).isInstanceOf(IllegalArgumentException.class);
    }

    /** From 0.98 of the range, reference sheet section 5. */
    @Test
    void aStatedRangeClipsFromNinetyEightHundredths() {
        SensorStream.Builder builder = new SensorStream.Builder().accelerationRange(100);
        for (int i = 0; i < 100; i++) {
            builder.add(i * 0.01, 0, -i, 0, 0, 0, 0);
        }
        SensorStream stream = builder.findClipping().build();
        assertThat(stream.accelerationClipped(97)).isFalse();
        assertThat(stream.accelerationClipped(98)).isTrue();
        assertThat(stream.turnRateClipped(98)).isFalse();
    }

    /** Standard words of converters: 16 bits run from -32768 to 32767. */
    @Test
    void anEndValueOfSixteenBitsIsFullScaleEvenOnce() {
        double step = 16 * 9.80665 / 32768;
        for (int end : new int[] {32767, -32768}) {
            SensorStream stream = wave(step, 30_000, end, 1, 7, 1e-9);
            assertThat(clipped(stream)).isEqualTo(1);
            assertThat(stream.accelerationClipped(1500)).isTrue();
            assertThat(stream.accelerationRange().orElseThrow()).isCloseTo(16 * 9.80665, within(0.01));
        }
        assertThat(clipped(wave(step, 30_000, 32_700, 1, 7, 1e-9))).isZero();
    }

    @Test
    void theGridIsFoundThroughTheRoundingOfThePrint() {
        double step = 16 * 9.80665 / 32768;
        assertThat(clipped(wave(step, 30_000, 32767, 2, 7, 1e-4 * 9.80665))).isEqualTo(2);
    }

    @Test
    void anExtremeThatRepeatsSteeplyIsFullScale() {
        // A calibrated sensor: no power of two anywhere near.
        assertThat(clipped(wave(0.0223, 1000, 1234, 4, 7, 1e-9))).isEqualTo(4);
        assertThat(clipped(wave(0.0223, 1000, 1234, 1, 7, 1e-9))).isZero();
    }

    @Test
    void aFlatTopOfValuesOnNoGridIsFullScale() {
        SplittableRandom random = new SplittableRandom(SEED);
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 4000; i++) {
            double ax = 200 * Math.exp(-0.01 * Math.pow(i % 400 - 200.0, 2)) + random.nextDouble();
            builder.add(i * 0.005, Math.min(ax, 156.9064), 0, 9.8, 0, 0, 0);
        }
        SensorStream stream = builder.findClipping().build();
        assertThat(clipped(stream)).isBetween(80, 120);
        assertThat(stream.accelerationRange().orElseThrow()).isCloseTo(156.9064, within(1e-4));
    }

    @Test
    void aSmoothPeakIsNotFullScale() {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 4000; i++) {
            double ax = Math.rint(80 * Math.sin(i * 0.003) / 0.0123) * 0.0123;
            builder.add(i * 0.005, ax, 0, 9.8, 0, 0, 0);
        }
        assertThat(clipped(builder.findClipping().build())).isZero();
    }

    /** A noisy wave on a grid, with a spike of some samples at 1500, printed with a rounding. */
    private static SensorStream wave(double step, int amplitude, int spike, int samples, long seed, double rounding) {
        SplittableRandom random = new SplittableRandom(seed);
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 4000; i++) {
            int count = (int) (amplitude * 0.9 * Math.sin(i * 0.05)) + random.nextInt(-40, 40);
            if (i >= 1500 && i < 1500 + samples) {
                count = spike;
            }
            double ax = Math.rint(count * step / rounding) * rounding;
            builder.add(i * 0.005, ax, 0.01 * random.nextInt(9), 9.8, 0, 0, 0);
        }
        return builder.findClipping().build();
    }

    private static int clipped(SensorStream stream) {
        int count = 0;
        for (int i = 0; i < stream.size(); i++) {
            count += stream.accelerationClipped(i) ? 1 : 0;
        }
        return count;
    }
}
