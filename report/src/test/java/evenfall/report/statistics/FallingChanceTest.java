package evenfall.report.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FallingChanceTest {

    private static final int[] ONE_SESSION = new int[400];

    @Test
    void hitsAndMissesThatDoNotOverlap_giveTheMiddleBetweenThem() {
        double[] at = {0.4, 0.5, 0.6, 0.7, 0.9, 1.0, 1.1, 1.2};
        boolean[] hit = {true, true, true, true, false, false, false, false};
        FallingChance fit = new FallingChance(at, hit, new int[8], 1);

        assertThat(fit.falls()).isTrue();
        assertThat(fit.half()).isCloseTo(0.8, within(0.005));
        // Eight landings say little, but as much to either side.
        assertThat(fit.interval().low()).isGreaterThan(0.4).isLessThan(0.7);
        assertThat(fit.interval().low() + fit.interval().high()).isCloseTo(1.6, within(0.01));
    }

    /** Mirrored hits: turned upside down and shifted, the answer turns and shifts with them. */
    @Test
    void theAnswer_doesNotDependOnTheUnitOrTheOrigin() {
        SplittableRandom random = new SplittableRandom(5);
        double[] at = random.doubles(200).toArray();
        boolean[] hit = hits(at, random, 0.45, 0.1);
        FallingChance plain = new FallingChance(at, hit, new int[200], 1);
        FallingChance other =
                new FallingChance(Arrays.stream(at).map(x -> 100 * x - 30).toArray(), hit, new int[200], 1);

        assertThat(other.half()).isCloseTo(100 * plain.half() - 30, within(1e-2));
        assertThat(other.interval().low()).isCloseTo(100 * plain.interval().low() - 30, within(0.05));
        assertThat(other.interval().high()).isCloseTo(100 * plain.interval().high() - 30, within(0.05));
    }

    @Test
    void aChanceThatRises_doesNotFall() {
        SplittableRandom random = new SplittableRandom(6);
        double[] at = random.doubles(400).toArray();
        boolean[] hit = new boolean[400];
        for (int i = 0; i < 400; i++) {
            hit[i] = at[i] > 0.5;
        }

        assertThat(new FallingChance(at, hit, ONE_SESSION, 1).falls()).isFalse();
    }

    @Test
    void sessionsThatDiffer_widenTheInterval() {
        SplittableRandom random = new SplittableRandom(7);
        double[] at = random.doubles(400).toArray();
        int[] session = new int[400];
        boolean[] hit = new boolean[400];
        double[] half = {0.2, 0.8, 0.3, 0.7, 0.25, 0.75, 0.4, 0.6};
        for (int i = 0; i < 400; i++) {
            session[i] = i % 8;
            hit[i] = random.nextDouble() < 1 / (1 + Math.exp((at[i] - half[session[i]]) / 0.05));
        }
        Interval apart = new FallingChance(at, hit, session, 8).interval();
        Interval together = new FallingChance(at, hit, ONE_SESSION, 1).interval();

        assertThat(apart.high() - apart.low()).isGreaterThan(1.5 * (together.high() - together.low()));
    }

    private static boolean[] hits(double[] at, SplittableRandom random, double half, double width) {
        boolean[] hit = new boolean[at.length];
        for (int i = 0; i < at.length; i++) {
            hit[i] = random.nextDouble() < 1 / (1 + Math.exp((at[i] - half) / width));
        }
        return hit;
    }
}
