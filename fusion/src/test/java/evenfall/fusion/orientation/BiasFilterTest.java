package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Rotations;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** The written-out Kalman step against the textbook one in general-purpose matrices. */
class BiasFilterTest {

    @Test
    void agreesWithTheTextbookStep() {
        SplittableRandom random = new SplittableRandom(99);
        BiasFilter filter = new BiasFilter(1e-4, 1e-9, 10);
        RealMatrix p = MatrixUtils.createRealIdentityMatrix(3).scalarMultiply(1e-4);
        RealMatrix b = new Array2DRowRealMatrix(3, 1);
        for (int i = 0; i < 300; i++) {
            double[][] rows = Rotations.random(random).toMatrix();
            double[] r = new double[11];
            for (int k = 0; k < 9; k++) {
                // not quite a rotation, as after a low-pass
                rows[k / 3][k % 3] *= 0.8;
                r[k] = rows[k / 3][k % 3];
            }
            double[] e = {random.nextDouble(-0.1, 0.1), random.nextDouble(-0.1, 0.1), random.nextDouble(-0.1, 0.1)};
            filter.grow();
            filter.measure(r, e[0], e[1], e[2], 2e-3, 0.5);

            for (int k = 0; k < 3; k++) {
                p.addToEntry(k, k, p.getEntry(k, k) < 1e-4 ? 1e-9 : 0);
            }
            RealMatrix h = new Array2DRowRealMatrix(rows);
            RealMatrix w = MatrixUtils.createRealDiagonalMatrix(new double[] {2e-3, 2e-3, 0.5});
            RealMatrix s = h.multiply(p).multiply(h.transpose()).add(w);
            RealMatrix k = p.multiply(h.transpose()).multiply(MatrixUtils.inverse(s));
            b = b.add(k.multiply(new Array2DRowRealMatrix(e)));
            p = p.subtract(k.multiply(h).multiply(p));
            String draw = "seed 99, draw " + i;
            assertThat(new double[] {filter.x, filter.y, filter.z})
                    .as(draw)
                    .containsExactly(b.getColumn(0), within(1e-12));
            assertThat(new double[] {filter.pxx, filter.pxy, filter.pxz, filter.pyy, filter.pyz, filter.pzz})
                    .as(draw)
                    .containsExactly(
                            new double[] {
                                p.getEntry(0, 0),
                                p.getEntry(0, 1),
                                p.getEntry(0, 2),
                                p.getEntry(1, 1),
                                p.getEntry(1, 2),
                                p.getEntry(2, 2)
                            },
                            within(1e-15));
        }
    }

    @Test
    void neverBelievesMoreThanItsLimit() {
        BiasFilter filter = new BiasFilter(1, 1e-9, 0.03);
        double[] unit = {1, 0, 0, 0, 1, 0, 0, 0, 1};
        for (int i = 0; i < 50; i++) {
            filter.measure(unit, 5, -5, 0.01 - filter.z, 1e-3, 1e-3);
        }
        assertThat(new double[] {filter.x, filter.y, filter.z})
                .containsExactly(new double[] {0.03, -0.03, 0.01}, within(1e-4));
    }
}
