package evenfall.fusion.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.BodyAxes;
import evenfall.ingest.recording.SignedAxis;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Alignment against worked values: cases S5 to S8 of the reference sheet, computed there with NumPy. */
class ReferenceAlignmentTest {

    private static final double LAST_DIGIT = 6e-7;

    @Test
    void mounting_fromGravityAndAxis_isCaseS5() {
        double[][] rows = MountingFinder.segmentFromSensor(
                        new Vector3(0.12, -0.06, 0.985), new Vector3(0.10, 0.97, 0.15))
                .toMatrix();

        assertThat(rows[0]).containsExactly(new double[] {0.988659, -0.082521, -0.125472}, within(LAST_DIGIT));
        assertThat(rows[1]).containsExactly(new double[] {0.089339, 0.994760, 0.049711}, within(LAST_DIGIT));
        assertThat(rows[2]).containsExactly(new double[] {0.120713, -0.060356, 0.990851}, within(LAST_DIGIT));
    }

    @Test
    void principalAxis_ofSixRates_isCaseS6() {
        double[][] rates = {
            {0.1, 1, 0.2}, {0.2, 2.1, 0.3}, {-0.1, -1.1, -0.1}, {0.3, 2.9, 0.5}, {-0.2, -2, -0.4}, {0.05, 0.4, 0.1}
        };
        PrincipalAxis axis = new PrincipalAxis();
        for (double[] r : rates) {
            axis.add(r[0], r[1], r[2], 1);
        }
        axis.addSense(0, 1, 0);

        PrincipalAxis.Axis found = axis.solve();

        assertThat(found.direction().x()).isCloseTo(0.098202, within(LAST_DIGIT));
        assertThat(found.direction().y()).isCloseTo(0.981339, within(LAST_DIGIT));
        assertThat(found.direction().z()).isCloseTo(0.165320, within(LAST_DIGIT));
        assertThat(found.share()).isCloseTo(0.999186, within(LAST_DIGIT));
    }

    @Test
    void clocks_throughTwoEvents_areCaseS7() {
        ClockLine line = ClockLine.through(2.310, 5.115, 602.345, 605.192);

        assertThat(1e6 * line.drift()).isCloseTo(70.0, within(0.01));
        assertThat(line.offsetS()).isCloseTo(2.804838309, within(LAST_DIGIT));
        ClockMap map = new ClockMap(line.offsetS(), 1e6 * line.drift(), 0, "two events");
        assertThat(map.toUpperBack(300)).isCloseTo(302.825837, within(LAST_DIGIT));
        assertThat(map.toPelvis(map.toUpperBack(300))).isCloseTo(300, within(1e-9));
    }

    @Test
    void lag_betweenSamples_isCaseS8() {
        assertThat(2 + Lag.vertex(53.99, 70.58, 29.67)).isCloseTo(1.788522, within(LAST_DIGIT));
    }

    @Test
    void clockFit_withOutliers_findsTheLine() {
        long seed = 20;
        SplittableRandom random = new SplittableRandom(seed);
        double[] t = new double[200];
        double[] offset = new double[200];
        for (int i = 0; i < t.length; i++) {
            t[i] = 10 * i;
            offset[i] = 1.25 + 45e-6 * t[i] + 0.001 * random.nextDouble(-1, 1);
            if (i % 5 == 0) {
                offset[i] += random.nextDouble(-0.2, 0.2);
            }
        }

        ClockLine line = ClockLine.fit(t, offset);

        assertThat(line.offsetS()).as("seed %d", seed).isCloseTo(1.25, within(0.0003));
        assertThat(1e6 * line.drift()).as("seed %d", seed).isCloseTo(45, within(0.5));
    }

    @Test
    void statedAxes_forwardZUpMinusY_turnThoseAxes() {
        var turn = MountingFinder.ofAxes(new BodyAxes(SignedAxis.PLUS_Z, SignedAxis.MINUS_Y))
                .segmentFromSensor();

        assertThat(turn.rotate(new Vector3(0, 0, 1)).minus(Vector3.X).norm()).isLessThan(1e-12);
        assertThat(turn.rotate(new Vector3(0, -1, 0)).minus(Vector3.UP).norm()).isLessThan(1e-12);
    }
}
