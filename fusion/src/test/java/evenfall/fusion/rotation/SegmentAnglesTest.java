package evenfall.fusion.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Angles against the reference sheet's table 1.2 (computed there with SciPy's Rotation, order ZXY). */
class SegmentAnglesTest {

    private static final double PRINTED = 6e-7;

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "A1, 0, 0, 30, 0.965926, 0, 0.258819, 0, -0.5, 0, 0.866025, 0, 1",
        "A2, 30, 10, 45, 0.880371, -0.020891, 0.389078, 0.270424, -0.696364, 0.173648, 0.696364, -0.492404, 0.852869",
        "A3, -45, -15, 89, 0.618309, 0.179920, 0.677643, -0.355137, -0.965779, -0.258819, 0.016858, 0.683013, 0.683013",
        "A4, 10, 5, 95, 0.669576, -0.034840, 0.736341, 0.090863, -0.992404, 0.087156, -0.086824, -0.172987, 0.981060",
        "A5, 120, -8, -12, 0.489735, 0.055617, -0.112217, 0.862829, 0.205888, -0.139173, 0.968628, -0.857597, -0.495134",
        "A6, 15, 89, 20, 0.680519, 0.668189, 0.212892, 0.212354, -0.005969, 0.999848, 0.016400, -0.004517, 0.016858",
        "A7, 0, 30, 90, 0.683013, 0.183013, 0.683013, 0.183013, -0.866025, 0.5, 0, 0, 0.866025"
    })
    void anglesQuaternionAndMatrixAgreeWithTheTable(
            String id,
            double yaw,
            double lean,
            double flexion,
            double w,
            double x,
            double y,
            double z,
            double r31,
            double r32,
            double r33,
            double r12,
            double r22) {
        Quaternion q = SegmentAngles.ofDegrees(yaw, lean, flexion).toQuaternion();
        assertThat(new double[] {q.w(), q.x(), q.y(), q.z()})
                .containsExactly(new double[] {w, x, y, z}, within(PRINTED));

        double[][] m = q.toMatrix();
        assertThat(m[2]).containsExactly(new double[] {r31, r32, r33}, within(PRINTED));
        assertThat(new double[] {m[0][1], m[1][1]}).containsExactly(new double[] {r12, r22}, within(PRINTED));

        SegmentAngles back = SegmentAngles.of(new Quaternion(w, x, y, z).normalised());
        double tolerance = id.equals("A6") ? 3e-3 : 1e-4; // six printed digits, and A6 lies near the singular lean
        assertThat(back.yawDegrees()).isCloseTo(yaw, within(tolerance));
        assertThat(back.leanDegrees()).isCloseTo(lean, within(tolerance));
        assertThat(back.flexionDegrees()).isCloseTo(flexion, within(tolerance));

        SegmentAngles still = SegmentAngles.ofGravity(new Vector3(r31, r32, r33));
        assertThat(still.leanDegrees()).isCloseTo(lean, within(tolerance));
        assertThat(still.flexionDegrees()).isCloseTo(flexion, within(tolerance));
    }

    @Test
    void inclinationIsTheAngleOfTheLongAxisFromTheVertical() {
        // reference 1.2: A2 inclination 45.8640 deg, A4 94.9809 deg
        assertThat(Math.toDegrees(SegmentAngles.ofDegrees(30, 10, 45).inclination()))
                .isCloseTo(45.8640, within(6e-5));
        assertThat(Math.toDegrees(SegmentAngles.ofDegrees(10, 5, 95).inclination()))
                .isCloseTo(94.9809, within(6e-5));
    }

    @Test
    void trunkAgainstPelvisIsTheProductAndNotTheDifference() {
        // reference 1.2, A8
        Quaternion pelvis = SegmentAngles.ofDegrees(10, 5, 20).toQuaternion();
        Quaternion trunk = SegmentAngles.ofDegrees(25, -3, 55).toQuaternion();
        SegmentAngles relative = SegmentAngles.of(pelvis.conjugate().times(trunk));
        assertThat(relative.yawDegrees()).isCloseTo(11.598665, within(1e-6));
        assertThat(relative.leanDegrees()).isCloseTo(-12.497271, within(1e-6));
        assertThat(relative.flexionDegrees()).isCloseTo(36.538217, within(1e-6));
    }

    @Test
    void anyRotationComesBackFromItsAngles() {
        SplittableRandom random = new SplittableRandom(20260917);
        for (int i = 0; i < 2000; i++) {
            Quaternion q = Rotations.random(random);
            assertThat(SegmentAngles.of(q).toQuaternion().angleTo(q))
                    .as("seed 20260917, draw %d, %s", i, q)
                    .isLessThan(1e-9);
        }
    }

    @Test
    void rotationsAtAndNearTheSingularLeanComeBackWithoutJumping() {
        SplittableRandom random = new SplittableRandom(4711);
        for (double off : new double[] {0, 1e-12, 1e-9, 1e-7, 1e-5, 1e-3}) {
            for (int side = -1; side <= 1; side += 2) {
                double yaw = random.nextDouble(-3, 3);
                double flexion = random.nextDouble(-3, 3);
                Quaternion q = new SegmentAngles(yaw, side * (Math.PI / 2 - off), flexion).toQuaternion();
                SegmentAngles back = SegmentAngles.of(q);
                assertThat(back.lean()).isCloseTo(side * (Math.PI / 2 - off), within(1e-7));
                assertThat(back.toQuaternion().angleTo(q))
                        .as("off %s side %d", off, side)
                        .isLessThan(1e-6);
            }
        }
    }
}
