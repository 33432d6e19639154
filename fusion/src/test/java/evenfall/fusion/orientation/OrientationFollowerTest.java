package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.recording.SensorStream;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** A stream that is followed block by block must come out as the same stream at once, to the last bit. */
final class OrientationFollowerTest {

    private static final int SAMPLES = 9000;
    private static final double RATE_HZ = 199.7;
    private static final double KEPT_S = 10;

    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "TWO_PASS")
    void blocksOfAnyLengthGiveWhatTheWholeGives(FilterKind kind) {
        for (long seed = 1; seed <= 3; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            SensorStream.Builder builder = new SensorStream.Builder();
            OrientationFollower follower = new OrientationFollower(kind, RATE_HZ, KEPT_S);
            Shaken shaken = new Shaken(random);
            SensorStream whole = shaken.whole();
            OrientationTrack expected = OrientationEstimator.causal(whole, kind, RATE_HZ);
            for (int to = 0; to < SAMPLES; ) {
                to = Math.min(SAMPLES, to + random.nextInt(1, 60));
                while (builder.size() < to) {
                    Shaken.copy(whole, builder);
                }
                follower.follow(builder.build(), to);
                OrientationTrack track = follower.track();
                assertThat(track.size()).isEqualTo(to);
                assertThat(track.at(to - 1))
                        .as("seed %d, sample %d", seed, to - 1)
                        .isEqualTo(expected.at(to - 1));
            }
            OrientationTrack tail = follower.track();
            assertThat(tail.first()).isPositive().isLessThanOrEqualTo(SAMPLES - (int) (KEPT_S * RATE_HZ));
            for (int i = tail.first(); i < SAMPLES; i++) {
                assertThat(tail.at(i)).as("seed %d, sample %d", seed, i).isEqualTo(expected.at(i));
            }
        }
    }

    /** A body that swings about all axes, is knocked, loses samples, and whose gyroscope clips. */
    private static final class Shaken {

        private static final double FULL_SCALE = 4;
        private final SensorStream.Builder builder = new SensorStream.Builder();

        Shaken(SplittableRandom random) {
            double t = 0;
            for (int i = 0; i < SAMPLES; i++) {
                t += (1 + 0.05 * random.nextGaussian()) / RATE_HZ + (random.nextInt(700) == 0 ? 0.2 : 0);
                double knock = random.nextInt(400) == 0 ? 40 : 0;
                double turn = 6 * Math.sin(1.1 * t);
                double x = Math.max(-FULL_SCALE, Math.min(FULL_SCALE, turn));
                builder.add(
                        t,
                        3 * Math.sin(2 * t) + random.nextGaussian(),
                        2 * Math.cos(t),
                        9.8 + knock,
                        x,
                        Math.sin(t),
                        0.3);
                if (x != turn) {
                    builder.clipTurnRate(i);
                }
            }
        }

        SensorStream whole() {
            return builder.build();
        }

        static void copy(SensorStream from, SensorStream.Builder to) {
            int i = to.size();
            to.add(from.time(i), from.ax(i), from.ay(i), from.az(i), from.gx(i), from.gy(i), from.gz(i));
            if (from.turnRateClipped(i)) {
                to.clipTurnRate(i);
            }
        }
    }
}
