package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Rotations;
import evenfall.fusion.rotation.Vector3;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ComplementaryFilterTest {

    @Test
    void aboutOneAxisItIsTheTextbookFilter() {
        // reference 2.1, F1; its start at 0 deg is a first sample of no turn that lies level
        double[] rates = {50, 50, 0, -20, 0};
        double[] tilts = {2, 1, 1, 0.5, 0.2};
        double[] expected = {0.529411765, 1.028835063, 1.028269670, 0.821833010, 0.809640206};
        ComplementaryFilter filter = new ComplementaryFilter(0.5);
        filter.step(0.01, 0, 0, 1, 0, 0, 0);
        for (int i = 0; i < 5; i++) {
            double tilt = Math.toRadians(tilts[i]);
            filter.step(0.01, -Math.sin(tilt), 0, Math.cos(tilt), 0, Math.toRadians(rates[i]), 0);
            assertThat(Math.toDegrees(2 * Math.atan2(filter.y(), filter.w()))).isCloseTo(expected[i], within(1e-9));
        }
    }

    @Test
    void aboutAnyAxisAndFromAnyPoseTheErrorShrinksByTheSameShare() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 200; i++) {
            Vector3 first = Rotations.randomVector(random);
            Vector3 then = first.normalised()
                    .plus(Rotations.randomVector(random).normalised().times(0.5));
            ComplementaryFilter filter = new ComplementaryFilter(0.5);
            filter.step(0.01, first.x(), first.y(), first.z(), 0, 0, 0);
            double before = first.angleTo(then);
            filter.step(0.01, then.x(), then.y(), then.z(), 0, 0, 0);
            Vector3 up = new evenfall.fusion.rotation.Quaternion(filter.w(), filter.x(), filter.y(), filter.z())
                    .rotate(then);
            assertThat(up.angleTo(Vector3.UP)).as("seed 3, draw %d", i).isCloseTo(before * 0.5 / 0.51, within(1e-9));
        }
    }
}
