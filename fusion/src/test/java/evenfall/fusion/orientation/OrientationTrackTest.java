package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Rotations;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class OrientationTrackTest {

    @Test
    void rowsComeBackWithTheirSignToWithinTheStatedTurn() {
        SplittableRandom random = new SplittableRandom(8);
        OrientationTrack.Builder builder = new OrientationTrack.Builder(5000);
        Quaternion[] rows = new Quaternion[5000];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = Rotations.random(random);
            builder.add(rows[i].w(), rows[i].x(), rows[i].y(), rows[i].z());
        }
        OrientationTrack track = builder.build();
        for (int i = 0; i < rows.length; i++) {
            Quaternion q = track.at(i);
            assertThat(q.norm()).isCloseTo(1, within(1e-12));
            assertThat(new double[] {q.w(), q.x(), q.y(), q.z()})
                    .as("seed 8, draw %d", i)
                    .containsExactly(new double[] {rows[i].w(), rows[i].x(), rows[i].y(), rows[i].z()}, within(3e-6));
            assertThat(q.angleTo(rows[i])).as("seed 8, draw %d", i).isLessThan(5e-6);
        }
    }

    @Test
    void equalPartsAndPureAxesComeBack() {
        double[][] rows = {
            {1, 0, 0, 0},
            {0, -1, 0, 0},
            {0, 0, 1, 0},
            {0, 0, 0, -1},
            {0.5, -0.5, 0.5, -0.5},
            {-Math.sqrt(0.5), Math.sqrt(0.5), 0, 0}
        };
        OrientationTrack.Builder builder = new OrientationTrack.Builder(rows.length);
        for (double[] r : rows) {
            builder.add(r[0], r[1], r[2], r[3]);
        }
        OrientationTrack track = builder.build();
        for (int i = 0; i < rows.length; i++) {
            assertThat(new double[] {track.w(i), track.x(i), track.y(i), track.z(i)})
                    .containsExactly(rows[i], within(2e-6));
        }
    }

    @Test
    void aRowMissingIsTold() {
        assertThatThrownBy(() -> new OrientationTrack.Builder(2).build()).isInstanceOf(IllegalStateException.class);
    }
}
