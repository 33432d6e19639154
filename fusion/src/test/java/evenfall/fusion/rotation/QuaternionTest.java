package evenfall.fusion.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Worked values from the reference sheet's table 1.3 and the algebra of rotations in general position. */
class QuaternionTest {

    private static final double PRINTED = 6e-7;
    private static final long SEED = 17;
    private static final Quaternion A2 = SegmentAngles.ofDegrees(30, 10, 45).toQuaternion();
    private static final Quaternion Q2 =
            Quaternion.about(Vector3.Y, Math.PI / 4).times(Quaternion.about(Vector3.UP, Math.PI / 6));

    @Test
    void productOfWholeNumbersIsExact() {
        // Q1
        assertThat(new Quaternion(1, 2, 3, 4).times(new Quaternion(5, 6, 7, 8)))
                .isEqualTo(new Quaternion(-60, 12, 30, 24));
    }

    @Test
    void orderOfTheProductMatters() {
        // Q2
        same(Q2, 0.892399, 0.099046, 0.369644, 0.239118);
        same(
                Quaternion.about(Vector3.UP, Math.PI / 6).times(Quaternion.about(Vector3.Y, Math.PI / 4)),
                0.892399,
                -0.099046,
                0.369644,
                0.239118);
    }

    @Test
    void vectorIsTurned() {
        // Q3
        Vector3 v = Q2.rotate(new Vector3(1, 2, 3));
        assertThat(v.minus(new Vector3(2.026586, 2.232051, 2.216055)).norm()).isLessThan(1e-6);
    }

    @Test
    void slerpGoesTheShortWayAtEvenSpeed() {
        // Q4, Q5
        Quaternion from = SegmentAngles.ofDegrees(10, 5, 20).toQuaternion();
        Quaternion to = SegmentAngles.ofDegrees(60, -10, 70).toQuaternion();
        same(from.slerp(to, 0.25), 0.948769, -0.070747, 0.257735, 0.168539);
        same(from.slerp(to, 0.5), 0.896365, -0.167549, 0.333006, 0.239926);
        assertThat(Math.toDegrees(from.angleTo(to))).isCloseTo(69.397319, within(PRINTED));
        Quaternion turnedSign = new Quaternion(-to.w(), -to.x(), -to.y(), -to.z());
        same(from.slerp(turnedSign, 0.5), 0.896365, -0.167549, 0.333006, 0.239926);
    }

    @Test
    void swingAndTwistAboutTheVertical() {
        // Q6
        assertThat(Math.toDegrees(A2.twistAngle(Vector3.UP))).isCloseTo(34.150866, within(PRINTED));
        same(A2.swing(Vector3.UP), 0.920968, -0.134215, 0.365792, 0);
        assertThat(Math.toDegrees(A2.swing(Vector3.UP).angle())).isCloseTo(45.863971, within(PRINTED));
    }

    @Test
    void swingAndTwistAboutTheLeftRightAxis() {
        // Q7
        assertThat(Math.toDegrees(A2.twistAngle(Vector3.Y))).isCloseTo(47.685823, within(PRINTED));
        same(A2.swing(Vector3.Y), 0.962515, 0.090205, 0, 0.255790);
        assertThat(Math.toDegrees(A2.swing(Vector3.Y).angle())).isCloseTo(31.474949, within(PRINTED));
    }

    @Test
    void bodyRateMakesASmallTurn() {
        // Q8
        same(Quaternion.fromBodyRate(new Vector3(0.5, -1, 2), 0.01), 0.999934, 0.002500, -0.005000, 0.010000);
    }

    @Test
    void matrixRowsAgreeWithTheSheet() {
        // reference 1.2, full matrix of A2
        double[][] m = A2.toMatrix();
        assertThat(m[0]).containsExactly(new double[] {0.550979, -0.492404, 0.673766}, within(PRINTED));
        assertThat(m[1]).containsExactly(new double[] {0.459891, 0.852869, 0.247216}, within(PRINTED));
        assertThat(m[2]).containsExactly(new double[] {-0.696364, 0.173648, 0.696364}, within(PRINTED));
    }

    @Test
    void inverseUndoesAndLengthIsKept() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 2000; i++) {
            Quaternion q = Rotations.random(random);
            Vector3 v = Rotations.randomVector(random);
            Vector3 turned = q.rotate(v);
            assertThat(turned.norm()).as(draw(i)).isCloseTo(v.norm(), within(1e-12));
            assertThat(q.rotateBack(turned).minus(v).norm()).as(draw(i)).isLessThan(1e-12);
            assertThat(q.conjugate().times(q).angle()).as(draw(i)).isLessThan(1e-7);
        }
    }

    @Test
    void productTurnsByTheRightOneFirst() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 2000; i++) {
            Quaternion p = Rotations.random(random);
            Quaternion q = Rotations.random(random);
            Vector3 v = Rotations.randomVector(random);
            assertThat(p.times(q).rotate(v).minus(p.rotate(q.rotate(v))).norm())
                    .as(draw(i))
                    .isLessThan(1e-12);
            assertThat(p.times(q).norm()).as(draw(i)).isCloseTo(1, within(1e-14));
        }
    }

    @Test
    void rotatingKeepsHandedness() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 500; i++) {
            Quaternion q = Rotations.random(random);
            Vector3 a = Rotations.randomVector(random);
            Vector3 b = Rotations.randomVector(random);
            assertThat(q.rotate(a.cross(b))
                            .minus(q.rotate(a).cross(q.rotate(b)))
                            .norm())
                    .as(draw(i))
                    .isLessThan(1e-10);
        }
    }

    @Test
    void matrixRoundTripIncludingHalfTurns() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 2000; i++) {
            Quaternion q = i % 2 == 0
                    ? Rotations.random(random)
                    : Quaternion.about(Rotations.randomVector(random), Math.PI - random.nextDouble(1e-7));
            assertThat(Quaternion.fromMatrix(q.toMatrix()).angleTo(q))
                    .as(draw(i))
                    .isLessThan(1e-7);
        }
        for (Vector3 axis : new Vector3[] {Vector3.X, Vector3.Y, Vector3.UP}) {
            Quaternion half = Quaternion.about(axis, Math.PI);
            assertThat(Quaternion.fromMatrix(half.toMatrix()).angleTo(half)).isLessThan(1e-7);
        }
    }

    @Test
    void matrixColumnsAreTheTurnedAxes() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 200; i++) {
            Quaternion q = Rotations.random(random);
            double[][] m = q.toMatrix();
            Vector3 y = q.rotate(Vector3.Y);
            assertThat(new Vector3(m[0][1], m[1][1], m[2][1]).minus(y).norm())
                    .as(draw(i))
                    .isLessThan(1e-14);
        }
    }

    @Test
    void shortestTurnLeadsFromOneDirectionToTheOther() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 1000; i++) {
            Vector3 a = Rotations.randomVector(random);
            Vector3 b = i % 3 == 0
                    ? a.times(-1).plus(Rotations.randomVector(random).times(1e-7))
                    : Rotations.randomVector(random);
            Quaternion q = Quaternion.between(a, b);
            // nearly opposite directions, off by 1e-9 and more: the sum that is halved keeps seven digits
            assertThat(q.rotate(a).angleTo(b)).as(draw(i)).isLessThan(1e-6);
            assertThat(q.angle()).as(draw(i)).isCloseTo(a.angleTo(b), within(1e-6));
        }
        assertThat(Quaternion.between(Vector3.X, Vector3.X.times(-3))
                        .rotate(Vector3.X)
                        .angleTo(Vector3.X.times(-1)))
                .isLessThan(1e-12);
    }

    @Test
    void swingTimesTwistIsTheWhole() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 1000; i++) {
            Quaternion q = Rotations.random(random);
            Vector3 n = Rotations.randomVector(random).normalised();
            Quaternion swing = q.swing(n);
            assertThat(swing.times(q.twist(n)).angleTo(q)).as(draw(i)).isLessThan(1e-7);
            assertThat(swing.x() * n.x() + swing.y() * n.y() + swing.z() * n.z())
                    .as(draw(i))
                    .isCloseTo(0, within(1e-13));
            assertThat(q.twist(n).angleTo(Quaternion.about(n, q.twistAngle(n))))
                    .as(draw(i))
                    .isLessThan(1e-7);
        }
    }

    @Test
    void manySmallTurnsOfOneRateMakeOneLargeTurn() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 50; i++) {
            Vector3 rate = Rotations.randomVector(random);
            Quaternion q = Quaternion.IDENTITY;
            for (int k = 0; k < 1000; k++) {
                q = q.times(Quaternion.fromBodyRate(rate, 0.001));
            }
            assertThat(q.angleTo(Quaternion.about(rate, rate.norm())))
                    .as(draw(i))
                    .isLessThan(1e-7);
        }
    }

    @Test
    void rotationVectorIsTheWayBackFromAxisAndAngle() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 500; i++) {
            Vector3 n = Rotations.randomVector(random).normalised();
            double angle = i % 2 == 0 ? random.nextDouble(0, Math.PI) : random.nextDouble(0, 1e-9);
            assertThat(Quaternion.about(n, angle)
                            .rotationVector()
                            .minus(n.times(angle))
                            .norm())
                    .as(draw(i))
                    .isLessThan(1e-12);
        }
    }

    @Test
    void slerpSplitsTheAngleInProportion() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 1000; i++) {
            Quaternion a = Rotations.random(random);
            Quaternion b = i % 2 == 0
                    ? Rotations.random(random)
                    : a.times(Quaternion.about(Rotations.randomVector(random), 1e-6));
            double part = random.nextDouble();
            assertThat(a.angleTo(a.slerp(b, part))).as(draw(i)).isCloseTo(part * a.angleTo(b), within(1e-10));
        }
    }

    @Test
    void whatHasNoDirectionIsRefused() {
        assertThatThrownBy(() -> new Quaternion(0, 0, 0, 0).normalised()).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Vector3.ZERO.normalised()).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Vector3(Double.NaN, 0, 1).normalised())
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static String draw(int i) {
        return "seed " + SEED + ", draw " + i;
    }

    private static void same(Quaternion q, double w, double x, double y, double z) {
        assertThat(new double[] {q.w(), q.x(), q.y(), q.z()})
                .containsExactly(new double[] {w, x, y, z}, within(PRINTED));
    }
}
