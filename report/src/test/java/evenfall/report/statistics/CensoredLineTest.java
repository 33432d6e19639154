package evenfall.report.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class CensoredLineTest {

    /** Against least squares of a general library, on points of which none is far from the line. */
    @Test
    void pointsWithoutWildOnes_giveTheLineOfLeastSquares() {
        double[] x = {1, 2, 3, 4, 5, 6, 7, 8};
        double[] y = {2.1, 3.9, 6.1, 7.9, 10.1, 11.9, 14.1, 15.9};
        SimpleRegression library = new SimpleRegression();
        for (int i = 0; i < x.length; i++) {
            library.addData(x[i], y[i]);
        }
        CensoredLine line = new CensoredLine(x, y, new boolean[x.length], true);

        assertThat(line.slope()).isCloseTo(library.getSlope(), within(1e-9));
        assertThat(line.at(4.5)).isCloseTo(library.predict(4.5), within(1e-9));
    }

    @Test
    void levelLine_ofCutOffValues_findsTheMiddleTheyWereDrawnAbout() {
        SplittableRandom random = new SplittableRandom(3);
        int n = 4000;
        double[] x = new double[n];
        double[] y = new double[n];
        boolean[] atLeast = new boolean[n];
        for (int i = 0; i < n; i++) {
            double value = 5 + 2 * random.nextGaussian();
            atLeast[i] = value > 6;
            y[i] = Math.min(value, 6);
        }
        CensoredLine line = new CensoredLine(x, y, atLeast, false);

        // Three in ten are cut off: their plain mean is 4.60 (normal distribution cut at half a standard deviation).
        assertThat(line.at(0)).isCloseTo(5, within(0.15));
        assertThat(line.slope()).isZero();
    }

    @Test
    void wildPoint_hardlyMovesTheLine() {
        double[] x = new double[30];
        double[] y = new double[30];
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 30; i++) {
            x[i] = i;
            y[i] = i + 0.1 * random.nextGaussian();
        }
        double before = new CensoredLine(x, y, new boolean[30], true).slope();
        y[29] += 50;

        assertThat(new CensoredLine(x, y, new boolean[30], true).slope()).isCloseTo(before, within(0.01));
    }
}
