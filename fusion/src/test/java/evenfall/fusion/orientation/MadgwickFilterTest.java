package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Quaternion;
import org.junit.jupiter.api.Test;

/** Gradient descent against the reference sheet's section 2.2 (computed there with NumPy from the equations). */
class MadgwickFilterTest {

    @Test
    void fiveStepsAgreeToTwelveDigits() {
        // F2
        double[][] rates = {{0.1, 0.5, -0.2}, {0.1, 0.6, -0.2}, {0, 0.4, -0.1}, {-0.1, 0.2, 0}, {0, 0, 0}};
        double[][] forces = {
            {-0.05, 0.02, 1}, {-0.10, 0.03, 0.98}, {-0.15, 0.02, 1.01}, {-0.12, 0.01, 0.99}, {-0.1, 0, 1}
        };
        double[][] expected = {
            {0.999993243181, 0.000871384789, 0.003428453525, -0.000999993243},
            {0.999969348794, 0.001662195417, 0.007385323430, -0.001998893691},
            {0.999941433770, 0.001786944143, 0.010378082556, -0.002496249839},
            {0.999919384338, 0.001357278564, 0.012376627950, -0.002490321364},
            {0.999906558960, 0.001324488722, 0.013375677867, -0.002492051380}
        };
        MadgwickFilter filter = new MadgwickFilter(0.1, Quaternion.IDENTITY);
        for (int i = 0; i < 5; i++) {
            double[] a = forces[i];
            double[] g = rates[i];
            filter.step(0.01, a[0], a[1], a[2], g[0], g[1], g[2]);
            assertThat(new double[] {filter.w(), filter.x(), filter.y(), filter.z()})
                    .containsExactly(expected[i], within(1e-12));
        }
    }

    @Test
    void stillAtTenDegreesItApproachesAtEvenSpeed() {
        // F3
        double tilt = Math.toRadians(10);
        MadgwickFilter filter = new MadgwickFilter(0.1, Quaternion.IDENTITY);
        double[] reached = new double[101];
        for (int i = 1; i <= 100; i++) {
            filter.step(0.01, -Math.sin(tilt), 0, Math.cos(tilt), 0, 0, 0);
            reached[i] = Math.toDegrees(2 * Math.atan2(filter.y(), filter.w()));
        }
        assertThat(reached[1]).isCloseTo(0.114592, within(1e-6));
        assertThat(reached[50]).isCloseTo(5.720142, within(1e-6));
        assertThat(reached[100]).isCloseTo(10.033411, within(1e-6));
    }

    @Test
    void withoutAStartItBeginsAtTheTiltOfItsFirstSample() {
        double tilt = Math.toRadians(40);
        MadgwickFilter filter = new MadgwickFilter(MadgwickFilter.DEFAULT_BETA);
        filter.step(0.01, -9.81 * Math.sin(tilt), 0, 9.81 * Math.cos(tilt), 0, 0, 0);
        assertThat(Math.toDegrees(2 * Math.atan2(filter.y(), filter.w()))).isCloseTo(40, within(0.05));
    }
}
