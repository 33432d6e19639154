package evenfall.report.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Objects;
import java.util.SplittableRandom;
import org.apache.commons.math3.stat.correlation.KendallsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.apache.commons.math3.stat.inference.TTest;
import org.junit.jupiter.api.Test;

/** What is said of a few values, one a session, against worked examples counted out by other programs. */
class SmallSamplesTest {

    private static final double[] RIGHT = {5.4, 6.1, 5.0, 6.8, 5.9, 6.4, 5.7, 6.2};
    private static final double[] LEFT = {5.0, 5.8, 5.1, 6.1, 5.3, 6.0, 5.6, 5.7};

    /** All 5⁵ resamples of five values (Efron and Tibshirani 1993), counted out by a general-purpose program. */
    @Test
    void allResamplesOfFive_giveTheReferenceIntervals() {
        double[] values = {0.8, -0.3, 1.1, 0.4, 0.9};
        BootstrapMean bootstrap = Objects.requireNonNull(BootstrapMean.of(values));

        assertThat(bootstrap.error()).isCloseTo(0.221630, within(1e-6));
        assertThat(bootstrap.percentile().low()).isCloseTo(0.12, within(1e-9));
        assertThat(bootstrap.percentile().high()).isCloseTo(0.96, within(1e-9));
        assertThat(bootstrap.bca().low()).isCloseTo(-0.02, within(1e-9));
        assertThat(bootstrap.bca().high()).isCloseTo(0.92, within(1e-9));
    }

    /**
     * The jackknife by which the program judges sides: of a mean it is the textbook's standard error, and the bootstrap's is that
     * times the root of (n - 1) / n; its acceleration is the reference's.
     */
    @Test
    void theJackknifeOfAMean_isItsStandardError() {
        double[] values = {0.8, -0.3, 1.1, 0.4, 0.9};
        double sum = Arrays.stream(values).sum();
        double[] without = Arrays.stream(values).map(v -> (sum - v) / 4).toArray();

        assertThat(Jackknife.error(without))
                .isCloseTo(new StandardDeviation().evaluate(values) / Math.sqrt(5), within(1e-12))
                .isCloseTo(0.221630 / Math.sqrt(0.8), within(2e-6));
        assertThat(Jackknife.acceleration(without)).isCloseTo(-0.061640, within(1e-6));
    }

    /** Ten and eleven values lie on either side of counting and drawing: both say nearly the same. */
    @Test
    void countedAndDrawnResamples_agree() {
        SplittableRandom random = new SplittableRandom(3);
        double[] eleven = random.doubles(11).toArray();
        BootstrapMean drawn = Objects.requireNonNull(BootstrapMean.of(eleven));
        double plain = new StandardDeviation(false).evaluate(eleven) / Math.sqrt(11);
        BootstrapMean counted = Objects.requireNonNull(BootstrapMean.of(Arrays.copyOf(eleven, 10)));

        assertThat(drawn.error()).isCloseTo(plain, within(0.02 * plain));
        assertThat(counted.error())
                .isCloseTo(
                        new StandardDeviation(false).evaluate(Arrays.copyOf(eleven, 10)) / Math.sqrt(10), within(1e-9));
        assertThat(drawn.bca().low()).isCloseTo(drawn.percentile().low(), within(plain / 2));
    }

    /** 6 of 256 ways to turn the signs, middle of the averages 0.4, counted out by a general-purpose program. */
    @Test
    void eightPairs_giveTheReferenceChance_andStudentsT() {
        double[] differences = new double[8];
        for (int i = 0; i < 8; i++) {
            differences[i] = RIGHT[i] - LEFT[i];
        }
        double mean = Arrays.stream(differences).average().orElseThrow();
        double sum = Arrays.stream(differences).sum();
        double[] without = Arrays.stream(differences).map(d -> (sum - d) / 7).toArray();
        StudentT said = new StudentT(mean, Jackknife.error(without), 7);

        assertThat(mean).isCloseTo(0.3625, within(1e-9));
        assertThat(FewDifferences.signFlipChance(differences)).isEqualTo(6.0 / 256);
        assertThat(FewDifferences.hodgesLehmann(differences)).isCloseTo(0.4, within(1e-9));
        assertThat(said.estimate() / said.error()).isCloseTo(3.920556, within(1e-6));
        assertThat(said.chance())
                .isCloseTo(0.005745, within(1e-6))
                .isCloseTo(new TTest().pairedTTest(RIGHT, LEFT), within(1e-9));
    }

    @Test
    void manyDifferences_areDrawnAndSayTheSame() {
        double[] many = new double[17];
        for (int i = 0; i < 17; i++) {
            many[i] = i < 8 ? RIGHT[i] - LEFT[i] : i < 16 ? LEFT[i - 8] - RIGHT[i - 8] : 0;
        }
        // As many to either side: no mean lies nearer to zero.
        assertThat(FewDifferences.signFlipChance(many)).isEqualTo(1);
        many[0] = 4;
        // Half of the ways leave the large one as it is, and most others with it lie nearer.
        assertThat(Objects.requireNonNull(FewDifferences.signFlipChance(many))).isBetween(0.3, 0.7);
        assertThat(FewDifferences.signFlipChance(new double[0])).isNull();
    }

    /** S = 43, variance 211.666667, p = 0.003891, tau b 0.656508 for twelve points with ties. */
    @Test
    void twelvePoints_giveTheReferenceCountOfPairs() {
        double[] y = {4.1, 4.4, 4.0, 4.6, 4.5, 4.9, 4.4, 5.0, 5.2, 4.8, 5.3, 5.1};
        double[] t = new double[12];
        Arrays.setAll(t, i -> i + 1);
        Kendall kendall = Kendall.of(t, y);

        assertThat(kendall.pairs()).isEqualTo(43);
        assertThat(kendall.variance()).isCloseTo(211.666667, within(1e-6));
        assertThat(kendall.tau()).isCloseTo(0.656508, within(1e-6));
        assertThat(kendall.chance()).isCloseTo(0.003891, within(1e-6));
    }

    /** Against a general-purpose library, with ties on both sides. */
    @Test
    void tau_isThatOfTheLibrary() {
        SplittableRandom random = new SplittableRandom(8);
        for (int k = 0; k < 500; k++) {
            int n = 3 + random.nextInt(12);
            double[] t = random.ints(n, 0, 6).asDoubleStream().toArray();
            double[] y = random.ints(n, 0, 6).asDoubleStream().toArray();
            double tau = new KendallsCorrelation().correlation(t, y);

            assertThat(Kendall.of(t, y).tau()).isCloseTo(Double.isFinite(tau) ? tau : 0, within(1e-9));
        }
    }

    /** Robinson 1987 and Zifchock 2008: 8 % and 2.5451 %; 66.6667 % and 20.4833 %; near zero both run away. */
    @Test
    void symmetry_isThatOfThePapers() {
        assertThat(Symmetry.index(5.2, 4.8)).isCloseTo(8.0, within(1e-9));
        assertThat(Symmetry.index(6, 3)).isCloseTo(66.6667, within(1e-4));
        assertThat(Symmetry.index(0.5, -0.4)).isCloseTo(1800, within(1e-9));
        assertThat(Symmetry.index(-2, 3)).isCloseTo(-1000, within(1e-9));
        assertThat(Symmetry.angle(5.2, 4.8)).isCloseTo(2.5451, within(1e-4));
        assertThat(Symmetry.angle(6, 3)).isCloseTo(20.4833, within(1e-4));
        assertThat(Symmetry.angle(0.5, -0.4)).isCloseTo(92.9553, within(1e-4));
        assertThat(Symmetry.angle(-2, 3)).isCloseTo(-87.4334, within(1e-4));
    }
}
