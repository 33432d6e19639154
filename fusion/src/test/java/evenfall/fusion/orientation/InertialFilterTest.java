package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;
import org.junit.jupiter.api.Test;

/** The low-pass-in-inertial-frame filter against the reference sheet's worked cases. */
class InertialFilterTest {

    @Test
    void restIsToldAfterItsTimeAndTheBiasFound() {
        // reference 2.4, F8: constant turn rate while lying still at 10 deg
        InertialFilter filter = new InertialFilter(InertialParams.published(), 100);
        double tilt = Math.toRadians(10);
        int firstRest = -1;
        for (int i = 0; i < 1000; i++) {
            filter.step(
                    0.01,
                    -9.81 * Math.sin(tilt),
                    0,
                    9.81 * Math.cos(tilt),
                    Math.toRadians(0.5),
                    Math.toRadians(-0.3),
                    Math.toRadians(0.2));
            if (firstRest < 0 && filter.isResting()) {
                firstRest = i;
            }
        }
        assertThat(firstRest).isEqualTo(149);
        assertThat(Math.toDegrees(filter.bias().x)).isCloseTo(0.498058, within(1e-6));
        assertThat(Math.toDegrees(filter.bias().y)).isCloseTo(-0.298857, within(1e-6));
        assertThat(Math.toDegrees(filter.bias().z)).isCloseTo(0.199291, within(1e-6));
        // the sheet's sigma is the upper bound that the largest row sum of the covariance gives
        BiasFilter b = filter.bias();
        double rowSum = Math.max(
                Math.abs(b.pxx) + Math.abs(b.pxy) + Math.abs(b.pxz),
                Math.max(
                        Math.abs(b.pxy) + Math.abs(b.pyy) + Math.abs(b.pyz),
                        Math.abs(b.pxz) + Math.abs(b.pyz) + Math.abs(b.pzz)));
        assertThat(Math.toDegrees(Math.sqrt(rowSum))).isCloseTo(0.034899, within(1e-6));
        assertThat(new double[] {filter.w(), filter.x(), filter.y(), filter.z()})
                .containsExactly(new double[] {0.996198, -0.000048, 0.087104, 0.001615}, within(1e-6));
    }

    @Test
    void swingWithAcceleration() {
        // reference 2.4, F9, online
        InertialFilter filter = new InertialFilter(InertialParams.published(), 100);
        double sum = 0;
        for (int i = 0; i < 1000; i++) {
            double[] v = swing(i);
            filter.step(0.01, v[0], v[1], v[2], v[3], v[4], v[5]);
            sum += squaredError(new Quaternion(filter.w(), filter.x(), filter.y(), filter.z()), i);
        }
        assertThat(Math.sqrt(sum / 1000)).isCloseTo(1.93752, within(1e-4));
        assertThat(new double[] {filter.w(), filter.x(), filter.y(), filter.z()})
                .containsExactly(new double[] {0.999981, 0.004797, -0.003978, -0.000321}, within(1e-6));
    }

    @Test
    void theFilterInUseDoesNoWorseOnThatSwing() {
        // reference 2.4, F9: the published filter 1.93752 deg online, 0.50653 deg offline
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 1000; i++) {
            double[] v = swing(i);
            builder.add(i / 100.0, v[0], v[1], v[2], v[3], v[4], v[5]);
        }
        assertThat(swingError(builder.build(), FilterKind.LIVE)).isLessThan(1.9);
        assertThat(swingError(builder.build(), FilterKind.TWO_PASS)).isLessThan(0.4);
    }

    private static double swingError(SensorStream stream, FilterKind kind) {
        OrientationTrack track = OrientationEstimator.estimate(stream, kind);
        double sum = 0;
        for (int i = 0; i < 1000; i++) {
            sum += squaredError(track.at(i), i);
        }
        return Math.sqrt(sum / 1000);
    }

    /** Sample {@code i} of F9: a pitch of 30 deg at 0.5 Hz under a level acceleration of 2 m/s² at 1 Hz. */
    private static double[] swing(int i) {
        double t = i / 100.0;
        double pitch = pitch(i);
        double rate = Math.toRadians(30) * Math.PI * Math.cos(Math.PI * t);
        double wx = 2 * Math.sin(2 * Math.PI * t);
        double c = Math.cos(pitch);
        double s = Math.sin(pitch);
        return new double[] {c * wx - s * 9.81, 0, s * wx + c * 9.81, Math.toRadians(0.3), rate, 0};
    }

    private static double pitch(int i) {
        return Math.toRadians(30) * Math.sin(Math.PI * i / 100.0);
    }

    private static double squaredError(Quaternion estimate, int i) {
        double error = OrientationError.of(estimate, Quaternion.about(Vector3.Y, pitch(i)))
                .inclinationDegrees();
        return error * error;
    }
}
