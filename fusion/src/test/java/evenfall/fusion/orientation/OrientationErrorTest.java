package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SegmentAngles;
import evenfall.fusion.rotation.Vector3;
import org.junit.jupiter.api.Test;

class OrientationErrorTest {

    @Test
    void partsOfAnErrorAgreeWithTheSheet() {
        // reference 2.5, F10
        OrientationError error = OrientationError.of(
                SegmentAngles.ofDegrees(33, 11, 44).toQuaternion(),
                SegmentAngles.ofDegrees(30, 10, 45).toQuaternion());
        assertThat(error.totalDegrees()).isCloseTo(3.147395, within(1e-6));
        assertThat(error.headingDegrees()).isCloseTo(2.817753, within(1e-6));
        assertThat(error.inclinationDegrees()).isCloseTo(1.402413, within(1e-6));
    }

    @Test
    void anotherHeadingIsNoErrorOfInclination() {
        Quaternion truth = SegmentAngles.ofDegrees(30, 10, 45).toQuaternion();
        Quaternion turned = Quaternion.about(Vector3.UP, 1.1).times(truth);
        assertThat(OrientationError.of(turned, truth).inclinationDegrees()).isCloseTo(0, within(1e-6));
        assertThat(OrientationError.of(turned, truth).headingDegrees()).isCloseTo(Math.toDegrees(1.1), within(1e-9));
    }
}
