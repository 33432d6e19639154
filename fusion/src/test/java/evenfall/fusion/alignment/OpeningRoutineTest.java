package evenfall.fusion.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Slow turns of closed form about the level axes of an upright sensor; a forward bend turns about its y, the left. */
final class OpeningRoutineTest {

    private static final double RATE = 100;

    private record Turn(double atS, double lastsS, double holdS, double degrees, double awryDeg) {}

    private final List<Turn> turns = new ArrayList<>();
    private double end = 4;

    /** Turns by {@code degrees} within {@code lastsS}, holds, turns back, and stands for 4 s. */
    private OpeningRoutineTest turn(double degrees, double lastsS, double holdS, double awryDeg) {
        turns.add(new Turn(end, lastsS, holdS, degrees, awryDeg));
        end += 2 * lastsS + holdS + 4;
        return this;
    }

    @Test
    void leaning_back_on_a_chair_before_the_bends_does_not_turn_the_heading_round() {
        turn(-16, 1, 3, 0).turn(-16, 1, 3, 0).turn(45, 1.3, 0.2, 0).turn(45, 1.3, 0.2, 0);
        assertThat(headingDeg(routine())).isCloseTo(0, within(1.0));
    }

    @Test
    void standing_up_between_two_held_bends_is_no_bend() {
        turn(40, 1, 1.5, 0);
        end -= 3.4;
        turn(40, 1, 1.5, 0);
        assertThat(headingDeg(routine())).isCloseTo(0, within(1.0));
    }

    @Test
    void bends_that_resemble_one_another_go_before_earlier_ones_that_are_awry() {
        turn(50, 1.3, 0.2, 21).turn(35, 1.3, 0.2, 12).turn(45, 1.3, 0.2, 0).turn(44, 1.3, 0.2, 1);
        assertThat(headingDeg(routine())).isCloseTo(0.5, within(1.0));
    }

    @Test
    void bends_of_a_warm_up_are_none_of_the_routine_until_somebody_stood_quietly() {
        end = 1.5;
        turn(40, 1.3, 0.2, 0);
        end -= 2.5;
        turn(40, 1.3, 0.2, 0);
        assertThat(routine().bends()).hasSize(2);
        assertThat(bendsAfterStanding()).isZero();

        turn(45, 1.3, 0.2, 0);
        end -= 2.5;
        turn(45, 1.3, 0.2, 0);
        assertThat(bendsAfterStanding()).isEqualTo(2);
    }

    private int bendsAfterStanding() {
        return routine().bendsAfterStanding(StillnessFinder.find(stream()));
    }

    private OpeningRoutine routine() {
        SensorStream stream = stream();
        return OpeningRoutine.find(stream, StillnessFinder.find(stream), end);
    }

    private SensorStream stream() {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < end * RATE; i++) {
            double t = i / RATE;
            double angle = 0;
            double rate = 0;
            double awry = 0;
            for (Turn turn : turns) {
                if (t >= turn.atS() && t < turn.atS() + 2 * turn.lastsS() + turn.holdS()) {
                    angle = angle(turn, t);
                    rate = (angle(turn, t + 1e-4) - angle(turn, t - 1e-4)) / 2e-4;
                    awry = Math.toRadians(turn.awryDeg());
                }
            }
            double side = -Gravity.STANDARD * Math.sin(angle);
            builder.add(
                    t,
                    side * Math.cos(awry),
                    side * Math.sin(awry),
                    Gravity.STANDARD * Math.cos(angle),
                    -rate * Math.sin(awry),
                    rate * Math.cos(awry),
                    0);
        }
        return builder.build();
    }

    private static double angle(Turn turn, double t) {
        double down = ramp((t - turn.atS()) / turn.lastsS());
        double up = ramp((t - turn.atS() - turn.lastsS() - turn.holdS()) / turn.lastsS());
        return Math.toRadians(turn.degrees()) * (down - up);
    }

    private static double ramp(double x) {
        return x <= 0 ? 0 : x >= 1 ? 1 : (1 - Math.cos(Math.PI * x)) / 2;
    }

    /** How far the sum of the bends' axes lies from the y axis, deg, + to the left. */
    private static double headingDeg(OpeningRoutine routine) {
        Vector3 sum = Vector3.ZERO;
        for (ForwardBend bend : routine.bends()) {
            sum = sum.plus(bend.axis());
        }
        return Math.toDegrees(Math.atan2(-sum.x(), sum.y()));
    }
}
