package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
                    Math.toRadians(0.2),
                    SampleTrust.FULL);
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
        // reference 2.4, F9
        InertialFilter filter = new InertialFilter(InertialParams.published(), 100);
        double sum = 0;
        for (int i = 0; i < 1000; i++) {
            double t = i / 100.0;
            double pitch = Math.toRadians(30) * Math.sin(Math.PI * t);
            double rate = Math.toRadians(30) * Math.PI * Math.cos(Math.PI * t);
            double wx = 2 * Math.sin(2 * Math.PI * t);
            double c = Math.cos(pitch);
            double s = Math.sin(pitch);
            filter.step(0.01, c * wx - s * 9.81, 0, s * wx + c * 9.81, Math.toRadians(0.3), rate, 0, SampleTrust.FULL);
            double cw = Math.cos(pitch / 2);
            double cy = -Math.sin(pitch / 2);
            double w = filter.w() * cw - filter.y() * cy;
            double z = filter.z() * cw + filter.x() * cy;
            double error = 2 * Math.acos(Math.min(1, Math.sqrt(w * w + z * z)));
            sum += error * error;
        }
        assertThat(Math.toDegrees(Math.sqrt(sum / 1000))).isCloseTo(1.93752, within(1e-4));
    }
}
