package evenfall.fusion.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StrapWatchTest {

    /** How far a person's stances lie apart, rad (common practice, no source). */
    private static final double SCATTER = Math.toRadians(0.5);

    private final Random random = new Random(7);
    private final List<Stance> stances = new ArrayList<>();

    @ParameterizedTest
    @ValueSource(doubles = {6, 9, 14, 20})
    void a_strap_that_moved_between_two_landings_is_found(double degrees) {
        stand(9, 0);
        stand(9, degrees);
        assertThat(StrapWatch.find(stances)).singleElement().satisfies(move -> {
            assertThat(move.atS())
                    .isBetween(stances.get(8).endS(), stances.get(9).startS());
            assertThat(Math.toDegrees(move.angle())).isCloseTo(degrees, within(0.6));
        });
    }

    /** Two bends of an opening, each held for a while, are as far off as straps move, and farther. */
    @ParameterizedTest
    @ValueSource(doubles = {15, 30, 40})
    void it_is_found_beside_bends_that_are_held(double bent) {
        stand(1, 0);
        stand(1, bent);
        stand(1, 0);
        stand(1, bent + 4);
        stand(16, 0);
        stand(12, 8);
        assertThat(StrapWatch.find(stances)).singleElement().satisfies(move -> {
            assertThat(move.atS())
                    .isBetween(stances.get(19).endS(), stances.get(20).startS());
            assertThat(Math.toDegrees(move.angle())).isCloseTo(8, within(0.6));
        });
    }

    @Test
    void two_moves_are_told_in_order() {
        stand(8, 0);
        stand(8, 7);
        stand(8, -4);
        assertThat(StrapWatch.find(stances)).hasSize(2).isSortedAccordingTo((a, b) -> Double.compare(a.atS(), b.atS()));
    }

    @Test
    void bends_sitting_and_leaning_for_a_while_are_no_moves() {
        stand(4, 0);
        stand(1, 35);
        stand(1, 0);
        stand(1, 30);
        stand(6, 0);
        stand(2, 25);
        stand(6, 0);
        stand(1, 8);
        stand(5, 0);
        assertThat(StrapWatch.find(stances)).isEmpty();
    }

    /** Who landed crookedly stays so until the next drop, some 15 s; and a strap that moves later is found beside it. */
    @Test
    void a_trunk_that_stays_crooked_after_one_landing_is_no_move() {
        stand(3, 0);
        stand(3, 6.5);
        assertThat(StrapWatch.find(stances)).isEmpty();
        stand(3, 0);
        assertThat(StrapWatch.find(stances)).isEmpty();
        stand(10, 13);
        assertThat(StrapWatch.find(stances))
                .singleElement()
                .satisfies(move -> assertThat(move.atS())
                        .isBetween(stances.get(8).endS(), stances.get(9).startS()));
    }

    @Test
    void short_stances_tell_more_narrowly_when_it_moved() {
        stand(9, 0);
        stand(9, 12);
        double from = stances.get(8).endS();
        double to = stances.get(9).startS();
        Vector3 before = stances.get(8).force();
        stances.add(9, new Stance(0, 100, from + 1, from + 1.6, before, Vector3.ZERO));
        assertThat(StrapWatch.find(stances)).singleElement().satisfies(move -> {
            assertThat(move.fromS()).isEqualTo(from + 1.6);
            assertThat(move.toS()).isEqualTo(to);
        });
    }

    @Test
    void a_posture_that_wanders_slowly_by_little_is_no_move() {
        for (int i = 0; i < 20; i++) {
            stand(1, 0.1 * i);
        }
        assertThat(StrapWatch.find(stances)).isEmpty();
    }

    /** Stands so often for two seconds, the sensor tipped by {@code degrees} from how it hung at first. */
    private void stand(int times, double degrees) {
        for (int i = 0; i < times; i++) {
            double start = 5.0 * stances.size();
            double tip = Math.toRadians(degrees) + SCATTER * random.nextGaussian();
            double side = SCATTER * random.nextGaussian();
            Vector3 force = new Vector3(Math.sin(tip), Math.sin(side), Math.cos(tip))
                    .normalised()
                    .times(Gravity.STANDARD);
            stances.add(new Stance(0, 400, start, start + 2, force, Vector3.ZERO));
        }
    }
}
