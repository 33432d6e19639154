package evenfall.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ThinningTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noise_keepsTheExtremesOfEveryColumn_withinTheTolerance(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int n = 5000;
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = (i + 0.5) / 1000;
            y[i] = random.nextDouble(-20, 20);
        }
        double columns = 100;
        int[] kept = new Thinning(columns, 5).keep(x, y, 0, n);

        assertThat(kept).as("seed %d", seed).isSorted().hasSizeLessThan(4 * 500 + 1);
        for (int column = 0; column < 500; column++) {
            int highest = highestInColumn(y, 10 * column, 10 * column + 10);
            assertThat(pixelsFromLine(x, y, kept, highest, columns, 5))
                    .as("seed %d column %d", seed, column)
                    .isLessThanOrEqualTo(0.2);
        }
        assertThat(highest(pick(y, kept))).isEqualTo(highest(y));
        assertThat(-highest(negative(pick(y, kept)))).isEqualTo(-highest(negative(y)));
    }

    @Test
    void straightLine_keepsItsEndsOnly() {
        double[] x = {0, 1, 2, 3, 4};
        double[] y = {0, 2, 4, 6, 8};

        assertThat(new Thinning(10, 10).keep(x, y, 0, 5)).containsExactly(0, 4);
    }

    @Test
    void smoothCurve_staysWithinAFifthOfAPixel() {
        int n = 2000;
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = i * 0.01;
            y[i] = 30 * Math.sin(x[i]);
        }
        int[] kept = new Thinning(40, 3).keep(x, y, 0, n);

        assertThat(kept).hasSizeLessThan(200);
        for (int k = 0; k + 1 < kept.length; k++) {
            for (int i = kept[k]; i <= kept[k + 1]; i++) {
                double share = (x[i] - x[kept[k]]) / (x[kept[k + 1]] - x[kept[k]]);
                double line = y[kept[k]] + share * (y[kept[k + 1]] - y[kept[k]]);
                // vertical distance: a fifth of a pixel across the line, more where the line is steep
                double slope = Math.hypot(40, 3 * 30) / 40;
                assertThat(Math.abs(y[i] - line) * 3).isLessThan(0.2 * slope + 0.001);
            }
        }
    }

    @Test
    void missingValues_stayAsABreak() {
        double[] x = {0, 1, 2, 3, 4};
        double[] y = {0, 0, Double.NaN, 0, 0};

        assertThat(new Thinning(10, 10).keep(x, y, 0, 5)).containsExactly(0, 1, 2, 3, 4);
    }

    @Test
    void nothing_givesNothing() {
        assertThat(new Thinning(1, 1).keep(new double[0], new double[0], 0, 0)).isEmpty();
        assertThat(new Thinning(1, 1).keep(new double[] {1}, new double[] {5}, 0, 1))
                .containsExactly(0);
    }

    private static int highestInColumn(double[] y, int from, int to) {
        int highest = from;
        for (int i = from; i < to; i++) {
            highest = y[i] > y[highest] ? i : highest;
        }
        return highest;
    }

    /** How far a sample lies from the straight line between the kept samples on either side of it, px. */
    private static double pixelsFromLine(
            double[] x, double[] y, int[] kept, int i, double columnsPerUnit, double pixelsPerUnit) {
        int found = Arrays.binarySearch(kept, i);
        if (found >= 0) {
            return 0;
        }
        int a = kept[-found - 2];
        int b = kept[-found - 1];
        double dx = (x[b] - x[a]) * columnsPerUnit;
        double dy = (y[b] - y[a]) * pixelsPerUnit;
        double px = (x[i] - x[a]) * columnsPerUnit;
        double py = (y[i] - y[a]) * pixelsPerUnit;
        return Math.abs(px * dy - py * dx) / Math.hypot(dx, dy);
    }

    private static double[] pick(double[] y, int[] indices) {
        return Arrays.stream(indices).mapToDouble(i -> y[i]).toArray();
    }

    private static double[] negative(double[] y) {
        return Arrays.stream(y).map(v -> -v).toArray();
    }

    private static double highest(double[] values) {
        return Arrays.stream(values).max().orElse(Double.NEGATIVE_INFINITY);
    }
}
