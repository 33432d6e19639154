package evenfall.fusion.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Columns whose offset is known because the test made it. */
class OffsetGuessTest {

    private static final int PERIOD = 1500;
    private static final int ALL = 1_000_000;

    @Test
    void motionThatComesOnce_isFoundAndStandsAlone() {
        SplittableRandom random = new SplittableRandom(4);
        for (int round = 0; round < 20; round++) {
            int later = random.nextInt(-900, 900);
            double[] motion = motion(random, 6000);

            OffsetGuess guess = OffsetGuess.of(part(motion, 1000, 5000), part(motion, 1000 - later, 5000 - later), ALL);

            assertThat(guess.steps()).as("round %s", round).isEqualTo(later);
            assertThat(guess.rival()).as("round %s", round).isNull();
        }
    }

    @Test
    void motionThatRepeats_isTakenNearestTo0_andTheOtherPlaceIsNamed() {
        SplittableRandom random = new SplittableRandom(5);
        for (int round = 0; round < 20; round++) {
            double[] once = motion(random, PERIOD);
            double[] motion = new double[12 * PERIOD];
            for (int i = 0; i < motion.length; i++) {
                motion[i] = once[i % PERIOD] + 0.2 * random.nextDouble(-1, 1);
            }
            int later = random.nextInt(-200, 200);
            // The second begins elsewhere, so that a whole repetition later it overlaps by more.
            double[] first = part(motion, PERIOD, 8 * PERIOD);
            double[] second = part(motion, PERIOD - later, 11 * PERIOD);

            OffsetGuess guess = OffsetGuess.of(first, second, ALL);

            assertThat(guess.steps()).as("round %s", round).isEqualTo(later);
            int apart = Math.abs(Objects.requireNonNull(guess.rival()) - later);
            assertThat(apart).as("round %s", round).isEqualTo(PERIOD);
        }
    }

    private static double[] part(double[] x, int from, int to) {
        double[] part = new double[to - from];
        System.arraycopy(x, from, part, 0, part.length);
        return part;
    }

    /** Swings that die away, at random times. */
    private static double[] motion(SplittableRandom random, int length) {
        double[] x = new double[length];
        for (int k = 0; k < length / 150; k++) {
            int at = random.nextInt(length);
            double size = random.nextDouble(2, 8);
            for (int i = 0; i < 150; i++) {
                x[(at + i) % length] += size * Math.exp(-i / 25.0) * Math.sin(i / 6.0);
            }
        }
        return x;
    }
}
