package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.wire.TapWatch.Answer;
import evenfall.ingest.wire.TapWatch.Verdict;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Made-up force: taps are half waves of a few milliseconds that ring out, steps and drops are longer and shake both. */
class TapWatchTest {

    private static final long SEED = 8;
    private static final int ONE = 0x0101;
    private static final int OTHER = 0x0202;
    private static final double NOISE = 0.05;

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final TapWatch watch = new TapWatch();
    private double[] up = {0, 0, 9.8};

    @ParameterizedTest
    @CsvSource({"100, 40", "200, 12", "400, 12", "200, 40", "400, 100"})
    void threeTapsOnOneSensorTellWhich(double rateHz, double strength) {
        for (int turn = 0; turn < 20; turn++) {
            TapWatch fresh = new TapWatch();
            up = direction();
            double fromS = 3 + random.nextDouble();
            Answer answer = play(fresh, rateHz, taps(fromS, strength, 0.5, 3), TapWatchTest::still, fromS + 1.5);

            assertThat(answer).as("turn %d, seed %d", turn, SEED).isEqualTo(new Answer(Verdict.TAPPED, ONE));
        }
    }

    @Test
    void twoTapsAreNotEnough() {
        assertThat(play(watch, 200, taps(3, 20, 0.5, 2), TapWatchTest::still, 4.5)
                        .verdict())
                .isEqualTo(Verdict.NONE);
    }

    @Test
    void tapsFarApartAreNoSign() {
        assertThat(play(watch, 200, taps(3, 20, 1.5, 3), TapWatchTest::still, 6.6)
                        .verdict())
                .isEqualTo(Verdict.NONE);
    }

    @Test
    void anAnswerDoesNotHoldForLong() {
        assertThat(play(watch, 200, taps(3, 20, 0.5, 3), TapWatchTest::still, 6.5)
                        .verdict())
                .isEqualTo(Verdict.NONE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {100, 200, 400})
    void shakingBothIsDoubtful(double rateHz) {
        Answer answer = play(watch, rateHz, taps(3, 30, 0.5, 3), taps(3.01, 15, 0.5, 3), 4.6);

        assertThat(answer.verdict()).isEqualTo(Verdict.OTHERS_MOVED);
    }

    /** Two steps a second, a quarter of a second each, 3 m/s² and 12 m/s² at their sharp beginning. */
    @Test
    void walkingIsNoTap() {
        DoubleUnaryOperator steps = t -> 3 * Math.sin(4 * Math.PI * t) + (t % 0.5 < 0.03 ? 12 : 0);
        for (int tenth = 20; tenth < 80; tenth++) {
            Answer answer = play(new TapWatch(), 200, steps, t -> 0.7 * steps.applyAsDouble(t), tenth / 10.0);

            assertThat(answer.verdict()).as("at %.1f s", tenth / 10.0).isNotEqualTo(Verdict.TAPPED);
        }
    }

    /** Flight without weight, then a landing of 5 g that takes a fifth of a second. */
    @Test
    void dropsAreNoTaps() {
        DoubleUnaryOperator drops = t -> {
            double phase = t % 0.6;
            return phase < 0.2 ? -9.8 : phase < 0.4 ? 50 * Math.sin(Math.PI * (phase - 0.2) / 0.2) : 0;
        };

        assertThat(play(watch, 400, drops, TapWatchTest::still, 6).verdict()).isNotEqualTo(Verdict.TAPPED);
    }

    @Test
    void aSensorThatWasTurnedBeforeIsUnderstood() {
        DoubleUnaryOperator taps = taps(4, 20, 0.4, 3);

        assertThat(play(watch, 200, t -> t < 2 ? -19 : taps.applyAsDouble(t), TapWatchTest::still, 5.3))
                .isEqualTo(new Answer(Verdict.TAPPED, ONE));
    }

    @Test
    void aSensorAloneLeavesDoubt() {
        for (double t = 0; t < 4.5; t += 0.005) {
            watch.sample(ONE, t, 0, 0, 9.8 + taps(3, 20, 0.5, 3).applyAsDouble(t), 0, 0, 0);
        }

        assertThat(watch.answer()).isEqualTo(new Answer(Verdict.OTHERS_SILENT, ONE));
    }

    @Test
    void anotherThatIsNotHeardAnyMoreLeavesDoubt() {
        for (double t = 0; t < 4.5; t += 0.005) {
            watch.sample(ONE, t, 0, 0, 9.8 + taps(3, 20, 0.5, 3).applyAsDouble(t), 0, 0, 0);
            if (t < 3.5) {
                watch.sample(OTHER, t, 0, 0, 9.8, 0, 0, 0);
            }
        }

        assertThat(watch.answer().verdict()).isEqualTo(Verdict.OTHERS_SILENT);
    }

    /** Plays both until a moment; the other's clock shows another time. */
    private Answer play(
            TapWatch into, double rateHz, DoubleUnaryOperator one, DoubleUnaryOperator other, double untilS) {
        for (int i = 0; i / rateHz < untilS; i++) {
            sample(into, ONE, i / rateHz, one.applyAsDouble(i / rateHz));
            sample(into, OTHER, 1000 + i / rateHz, other.applyAsDouble(i / rateHz));
        }
        return into.answer();
    }

    private void sample(TapWatch into, int sensor, double timeS, double blow) {
        into.sample(
                sensor,
                timeS,
                up[0] * (1 + blow / 9.8) + NOISE * random.nextGaussian(),
                up[1] * (1 + blow / 9.8) + NOISE * random.nextGaussian(),
                up[2] * (1 + blow / 9.8) + NOISE * random.nextGaussian(),
                0,
                0,
                0);
    }

    /** Taps of 12 ms that ring out within 50 ms, as soft skin and a strap let them. */
    private static DoubleUnaryOperator taps(double fromS, double strength, double everyS, int count) {
        return t -> {
            double sum = 0;
            for (int k = 0; k < count; k++) {
                double since = t - fromS - k * everyS;
                if (since >= 0 && since < 0.012) {
                    sum += strength * Math.sin(Math.PI * since / 0.012);
                } else if (since >= 0.012 && since < 0.1) {
                    sum -= strength
                            * 0.4
                            * Math.exp(-(since - 0.012) / 0.015)
                            * Math.sin(Math.PI * since / 0.012 - Math.PI);
                }
            }
            return sum;
        };
    }

    private static double still(double timeS) {
        return 0;
    }

    private double[] direction() {
        double x = random.nextGaussian();
        double y = random.nextGaussian();
        double z = random.nextGaussian();
        double length = Math.sqrt(x * x + y * y + z * z) / 9.8;
        return new double[] {x / length, y / length, z / length};
    }
}
