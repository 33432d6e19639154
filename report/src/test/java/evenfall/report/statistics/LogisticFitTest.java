package evenfall.report.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LogisticFitTest {

    /** Two by two: with Jeffreys' prior each cell counts half more (Firth 1993), so the log odds have a closed form. */
    @Test
    void twoByTwo_isTheLogOddsWithHalfACountAdded() {
        double[][] columns = new double[2][18];
        boolean[] hit = new boolean[18];
        for (int i = 0; i < 18; i++) {
            columns[0][i] = 1;
            columns[1][i] = i < 8 ? 0 : 1;
            hit[i] = i < 3 || i >= 10;
        }
        double[] b = LogisticFit.of(columns, hit);

        assertThat(b[0]).isCloseTo(Math.log(3.5 / 5.5), within(1e-6));
        assertThat(b[0] + b[1]).isCloseTo(Math.log(8.5 / 2.5), within(1e-6));
    }

    /** Hits and misses that do not overlap: finite, and where it is one half is as {@link FallingChance} finds it otherwise. */
    @Test
    void whereHitsAndMissesAreApart_itStaysFinite_andAgreesWithTheProfile() {
        SplittableRandom random = new SplittableRandom(9);
        for (int round = 0; round < 20; round++) {
            int n = 40;
            double[][] columns = new double[2][n];
            boolean[] hit = new boolean[n];
            for (int i = 0; i < n; i++) {
                columns[0][i] = 1;
                columns[1][i] = 0.3 + random.nextDouble();
                hit[i] = round == 0
                        ? columns[1][i] < 0.8
                        : random.nextDouble() < 1 / (1 + Math.exp(8 * (columns[1][i] - 0.8)));
            }
            double[] b = LogisticFit.of(columns, hit);
            double half = new FallingChance(columns[1], hit, new int[n], 1).half();

            assertThat(-b[0] / b[1]).as("round %d", round).isCloseTo(half, within(2e-3));
        }
    }

    @Test
    void columnsThatRepeatOneAnother_giveNothing() {
        double[][] columns = {{1, 1, 1, 1}, {2, 2, 2, 2}};

        assertThat(LogisticFit.of(columns, new boolean[] {true, false, true, false}))
                .containsOnly(0);
    }
}
