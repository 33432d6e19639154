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

    /** Few landings from few heights: where a fine net over all curves finds the most likely one (likelihood with Jeffreys' prior). */
    @Test
    void few_giveTheMostLikelyCurve() {
        SplittableRandom random = new SplittableRandom(8);
        int looked = 0;
        for (int k = 0; k < 80; k++) {
            double[] at = new double[12];
            for (int i = 0; i < at.length; i++) {
                at[i] = 0.4 + 0.2 * random.nextInt(3);
            }
            boolean[] hit = hits(at, random, 0.5, 0.15);
            double spread =
                    Arrays.stream(at).max().orElse(0) - Arrays.stream(at).min().orElse(0);
            if (spread < 0.3 || allAlike(hit)) {
                continue;
            }
            double[] net = net(at, hit);
            FallingChance fit = new FallingChance(at, hit, new int[12], 1);
            if (net[1] > 0.5 && net[1] < 200 && net[0] > 0.4 && net[0] < 0.8) {
                looked++;
                assertThat(fit.half()).as("round " + k).isCloseTo(net[0], within(0.01));
            }
        }
        assertThat(looked).isGreaterThan(30);
    }

    private static boolean allAlike(boolean[] hit) {
        int hits = 0;
        for (boolean one : hit) {
            hits += one ? 1 : 0;
        }
        return hits == 0 || hits == hit.length;
    }

    /** The half and the steepness, one a unit, of the most likely curve of a net. */
    private static double[] net(double[] at, boolean[] hit) {
        double most = Double.NEGATIVE_INFINITY;
        double[] best = new double[2];
        for (double half = 0.3; half < 0.9; half += 0.005) {
            for (double steep = 0.2; steep < 400; steep *= 1.03) {
                double likelihood = 0;
                double[] information = new double[3];
                for (int i = 0; i < at.length; i++) {
                    double p = 1 / (1 + Math.exp(steep * (at[i] - half)));
                    likelihood += Math.log(hit[i] ? p : 1 - p);
                    information[0] += p * (1 - p);
                    information[1] += p * (1 - p) * at[i];
                    information[2] += p * (1 - p) * at[i] * at[i];
                }
                likelihood += Math.log(information[0] * information[2] - information[1] * information[1]) / 2;
                if (likelihood > most) {
                    most = likelihood;
                    best = new double[] {half, steep};
                }
            }
        }
        return best;
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
