package evenfall.fusion.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

class StrayingTest {

    private final Random random = new Random(11);

    @Test
    void aPersonOfWhomNothingIsKnown_straysAsUsual() {
        assertThat(Straying.USUAL.factor()).isEqualTo(1);
    }

    @Test
    void manyDirections_tellThePersonsFactor_whateverKindsTheyAre() {
        Straying straying = Straying.USUAL;
        for (double usual : List.of(0.2, 1.3, 0.7)) {
            straying = straying.with(squares(400, 2.5 * usual), 400, usual);
        }

        assertThat(straying.factor()).isCloseTo(2.5, within(0.1));
    }

    @Test
    void twoBendsThatHappenToBeAlike_tellLittle_beforeTheDropsDo() {
        Straying bends = Straying.USUAL.with(0, 2, 0.2);
        Straying drops = Straying.USUAL.with(squares(10, 3 * 1.3), 10, 1.3);

        assertThat(bends.factor()).isBetween(0.8, 1.0);
        assertThat(bends.with(drops).factor()).isGreaterThan(1.5);
        assertThat(bends.with(drops)).isEqualTo(drops.with(bends));
    }

    /** The expected variance given a sample, by conjugacy (Gelman et al., Bayesian Data Analysis, 3rd ed., 2.6). */
    @Test
    void variance_isThatOfPersonsDrawnFromWhatIsUsual() {
        double usual = 0.7;
        // What is usual, seen twice, is an inverse gamma distribution of shape 2 with the usual variance as its mean.
        GammaDistribution precision = new GammaDistribution(new Well19937c(3), 2, 1 / (usual * usual));
        double ratio = 0;
        int persons = 40_000;
        for (int k = 0; k < persons; k++) {
            double variance = 1 / precision.sample();
            ratio += variance / Straying.variance(squares(3, Math.sqrt(variance)), 3, usual);
        }

        // Whatever was seen, the expected true variance is the one told.
        assertThat(ratio / persons).isCloseTo(1, within(0.03));
    }

    /** Sum of squared distances from their mean of so many draws. */
    private double squares(int n, double sigma) {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double x = sigma * random.nextGaussian();
            sum += x;
            squares += x * x;
        }
        return squares - sum * sum / n;
    }
}
