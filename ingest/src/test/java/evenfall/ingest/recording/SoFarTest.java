package evenfall.ingest.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A stream asked for again and again while it grows must be the stream that is built of the same samples at once. */
final class SoFarTest {

    /** The rate may be that of nine tenths of the samples; jitter of 5 % over hundreds of intervals. */
    private static final double RATE_PART = 0.01;

    @Test
    void isTheStreamBuiltAtOnce() {
        for (long seed = 1; seed <= 20; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            SensorStream.Builder growing = new SensorStream.Builder();
            double rate = random.nextDouble(50, 400);
            double t = random.nextDouble(0, 1000);
            SensorStream soFar = null;
            for (int i = 0; i < 12_000; i++) {
                t += (1 + 0.05 * random.nextDouble(-1, 1)) / rate + (random.nextInt(900) == 0 ? 0.3 : 0);
                // Blows of four samples, beyond full scale every time.
                double a = i % 500 < 4 ? 20 * Gravity.STANDARD : Gravity.STANDARD * random.nextGaussian();
                double g = 10 * random.nextGaussian();
                growing.add(t, clip(a, 16 * Gravity.STANDARD), a / 3, 9.8, clip(g, 34.9), g / 2, -g / 3);
                if (i % 97 == 0) {
                    soFar = growing.soFar();
                }
            }
            soFar = growing.soFar();
            SensorStream whole = growing.findClipping().build();
            assertThat(soFar.size()).isEqualTo(whole.size());
            assertThat(soFar.rateHz()).as("seed %d", seed).isCloseTo(whole.rateHz(), within(RATE_PART * rate));
            assertThat(soFar.gaps()).as("seed %d", seed).isEqualTo(whole.gaps()).isNotEmpty();
            int clipped = 0;
            for (int i = 0; i < whole.size(); i++) {
                assertThat(soFar.time(i)).isEqualTo(whole.time(i));
                assertThat(soFar.accelerationClipped(i)).isEqualTo(whole.accelerationClipped(i));
                assertThat(soFar.turnRateClipped(i)).isEqualTo(whole.turnRateClipped(i));
                clipped += whole.accelerationClipped(i) ? 1 : 0;
            }
            assertThat(clipped).as("seed %d", seed).isPositive();
            assertThat(soFar.accelerationRange()).isEqualTo(whole.accelerationRange());
        }
    }

    @Test
    void doesNotChangeWhenMoreComes() {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 500; i++) {
            builder.add(i / 100.0, 0, 0, 9.8, 0, 0, 0);
        }
        SensorStream before = builder.soFar();
        for (int i = 0; i < 500; i++) {
            builder.add(7 + i / 100.0, 0, 0, 9.8, 0, 0, 0);
        }
        builder.soFar();

        assertThat(before.size()).isEqualTo(500);
        assertThat(before.gaps()).isEmpty();
        assertThat(before.durationS()).isEqualTo(4.99);
    }

    private static double clip(double value, double range) {
        return Math.max(-range, Math.min(range, value));
    }
}
