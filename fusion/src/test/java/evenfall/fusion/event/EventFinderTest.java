package evenfall.fusion.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.orientation.OrientationTrack;
import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.recording.SensorStream;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Movements of closed form; expected times and speeds follow from free fall (reference sheet 4.1 and H4). */
final class EventFinderTest {

    private static final double RATE = 200;

    @ParameterizedTest
    @ValueSource(doubles = {50, 100, 200, 238, 400, 800, 1600})
    void a_drop_is_found_at_every_rate(double rateHz) {
        // Reference sheet H4: 0.35 s of free fall, contact speed 3.432327 m/s, half-sine of 0.2 s that stops it.
        VerticalScript script = new VerticalScript().stand(3).fly(0.35);
        double contact = script.end();
        script.push(0.2, 3.432327).stand(3);

        List<Event> events = script.events(rateHz, Quaternion.IDENTITY);

        assertThat(events).hasSize(1);
        Event drop = events.get(0);
        assertThat(drop.kind()).isEqualTo(EventKind.LANDING);
        assertThat(drop.startS()).isCloseTo(contact - 0.35, within(0.03));
        assertThat(drop.contactS()).isCloseTo(contact, within(0.04));
        assertThat(drop.peakS()).isCloseTo(contact + 0.1, within(0.025));
        assertThat(drop.endS()).isCloseTo(contact + 0.2, within(0.06));
    }

    @Test
    void a_jump_with_a_counter_movement_is_one_landing() {
        VerticalScript script = jump(new VerticalScript().stand(2), 1.8).stand(2);
        assertThat(script.events(RATE, Quaternion.IDENTITY))
                .extracting(Event::kind)
                .containsExactly(EventKind.LANDING);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8, 1.3, 2.5, 3.2})
    void a_hop_of_any_height_is_found(double takeoffSpeed) {
        VerticalScript script =
                jump(new VerticalScript().stand(2), takeoffSpeed).stand(2);
        assertThat(script.events(RATE, Quaternion.IDENTITY))
                .extracting(Event::kind)
                .containsExactly(EventKind.LANDING);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.06, 0.1})
    void a_landing_whose_impact_lies_in_a_gap_is_found(double gapS) {
        VerticalScript script = new VerticalScript().stand(3).fly(0.35);
        double contact = script.end();
        // Most of the brake is hidden: half a sine of 0.12 s that stops 3.43 m/s.
        SensorStream whole = script.push(0.12, 3.432327).stand(3).stream(RATE, Quaternion.IDENTITY);
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < whole.size(); i++) {
            if (Math.abs(whole.time(i) - contact - 0.06) > gapS / 2) {
                builder.add(whole.time(i), whole.ax(i), whole.ay(i), whole.az(i), 0, 0, 0);
            }
        }
        SensorStream stream = builder.build();
        List<Event> events = new EventFinder().find(stream, VerticalScript.still(stream.size(), Quaternion.IDENTITY));
        assertThat(events).extracting(Event::kind).containsExactly(EventKind.LANDING);
    }

    @Test
    void a_new_drop_soon_after_a_landing_is_one_of_its_own() {
        VerticalScript script = new VerticalScript().stand(2);
        drop(script, 0.4).stand(0.6);
        drop(script, 0.4).stand(2);
        assertThat(script.events(RATE, Quaternion.IDENTITY)).hasSize(2);
    }

    @Test
    void the_hop_that_catches_a_landing_is_not_one_of_its_own() {
        VerticalScript script = drop(new VerticalScript().stand(2), 0.45);
        double after = script.end();
        jump(script.stand(0.3), 0.7).stand(2);
        assertThat(script.events(RATE, Quaternion.IDENTITY))
                .singleElement()
                .satisfies(event -> assertThat(event.peakS()).isLessThan(after));
    }

    @Test
    void heel_drops_are_no_landings() {
        // Up onto the toes by 7 cm in half a second, and down on the heels in free fall from there.
        VerticalScript script = new VerticalScript().stand(2);
        for (int i = 0; i < 2; i++) {
            script.push(0.25, 0.28).push(0.25, -0.28).stand(0.3).fly(0.119).push(0.05, 0.119 * VerticalScript.G);
            script.stand(2);
        }
        assertThat(script.events(RATE, Quaternion.IDENTITY)).isEmpty();
    }

    @Test
    void walking_is_nothing() {
        // 2 steps a second; pelvis force between 0.6 and 1.4 weights: brisk walking, common practice, no source.
        VerticalScript script = new VerticalScript().stand(2).sway(60, 2, 0.4).stand(2);
        assertThat(script.events(RATE, Quaternion.IDENTITY)).isEmpty();
    }

    @Test
    void running_is_one_run_of_steps() {
        // Each step 0.12 s of flight and 0.25 s of contact that turns 0.59 m/s down into 0.59 m/s up.
        VerticalScript script = new VerticalScript().stand(2).push(0.2, 0.588);
        for (int i = 0; i < 20; i++) {
            script.fly(0.12).push(0.25, 0.12 * VerticalScript.G);
        }
        script.fly(0.12).push(0.25, 0.588).stand(2);
        List<Event> events = script.events(RATE, Quaternion.IDENTITY);
        assertThat(events).hasSize(1);
        assertThat(events.get(0).kind()).isEqualTo(EventKind.STEPS);
        assertThat(events.get(0).count()).isBetween(19, 21);
    }

    @Test
    void sitting_down_and_standing_up_are_nothing() {
        // Down to 1.6 m/s and stopped over half a second; up at 1.5 m/s, which gravity takes away again.
        VerticalScript script = new VerticalScript().stand(2).push(0.35, -1.6).push(0.45, 1.6);
        script.stand(3).push(0.5, 1.5).push(0.25, -1.5).stand(2);
        assertThat(script.events(RATE, Quaternion.IDENTITY)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {25, 80})
    void a_drop_that_ends_lying_is_a_fall_and_one_that_ends_bent_a_landing(double degrees) {
        VerticalScript script = drop(new VerticalScript().stand(3), 0.4);
        double bent = script.end();
        script.stand(3);
        double half = Math.toRadians(degrees) / 2;
        Quaternion after = new Quaternion(Math.cos(half), Math.sin(half), 0, 0);
        SensorStream upright = script.stream(RATE, Quaternion.IDENTITY);
        SensorStream tipped = script.stream(RATE, after);
        SensorStream.Builder builder = new SensorStream.Builder();
        float[] wxyz = new float[4 * upright.size()];
        for (int i = 0; i < upright.size(); i++) {
            boolean over = upright.time(i) > bent;
            SensorStream now = over ? tipped : upright;
            builder.add(now.time(i), now.ax(i), now.ay(i), now.az(i), 0, 0, 0);
            wxyz[4 * i] = over ? (float) after.w() : 1;
            wxyz[4 * i + 1] = over ? (float) after.x() : 0;
        }
        assertThat(new EventFinder().find(builder.build(), new OrientationTrack(wxyz)))
                .extracting(Event::kind)
                .containsExactly(degrees < 40 ? EventKind.LANDING : EventKind.FALL);
    }

    @Test
    void mounting_bias_and_scale_change_nothing() {
        long seed = 7041;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 20; i++) {
            Quaternion mounting = anyRotation(random);
            VerticalScript script = drop(new VerticalScript().stand(2), 0.3 + 0.2 * random.nextDouble());
            jump(script.stand(2), 1.5).stand(2);
            SensorStream clean = script.stream(RATE, mounting);
            SensorStream.Builder worse = new SensorStream.Builder();
            double bias = random.nextDouble(-0.4, 0.4);
            double scale = random.nextDouble(0.96, 1.04);
            for (int k = 0; k < clean.size(); k++) {
                double noise = random.nextDouble(-0.3, 0.3);
                worse.add(
                        clean.time(k),
                        scale * clean.ax(k) + bias + noise,
                        scale * clean.ay(k) - bias,
                        scale * clean.az(k) + noise,
                        0,
                        0,
                        0);
            }
            SensorStream stream = worse.build();
            assertThat(new EventFinder().find(stream, VerticalScript.still(stream.size(), mounting)))
                    .as("seed %d, run %d, mounting %s", seed, i, mounting)
                    .extracting(Event::kind)
                    .containsExactly(EventKind.LANDING, EventKind.LANDING);
        }
    }

    @Test
    void a_long_gap_hides_what_lies_in_it_and_nothing_else() {
        VerticalScript script = drop(new VerticalScript().stand(3), 0.4);
        double lost = script.end() - 0.2;
        drop(script.stand(4), 0.4).stand(3);
        SensorStream whole = script.stream(RATE, Quaternion.IDENTITY);
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < whole.size(); i++) {
            if (Math.abs(whole.time(i) - lost) > 0.8) {
                builder.add(whole.time(i), whole.ax(i), whole.ay(i), whole.az(i), 0, 0, 0);
            }
        }
        SensorStream stream = builder.build();
        assertThat(new EventFinder().find(stream, VerticalScript.still(stream.size(), Quaternion.IDENTITY)))
                .singleElement()
                .satisfies(event -> assertThat(event.peakS()).isGreaterThan(lost + 1));
    }

    @Test
    void stretches_of_a_long_stream_join_without_seams() {
        VerticalScript script = new VerticalScript().stand(3);
        int drops = 50;
        for (int i = 0; i < drops; i++) {
            drop(script, 0.35).stand(6.5);
        }
        assertThat(script.end()).as("several stretches").isGreaterThan(300);
        assertThat(script.events(100, Quaternion.IDENTITY)).hasSize(drops);
    }

    @Test
    void a_stream_too_short_for_anything_has_no_events() {
        for (double seconds : new double[] {0.006, 0.02, 0.1, 1}) {
            assertThat(new VerticalScript().stand(seconds).events(RATE, Quaternion.IDENTITY))
                    .isEmpty();
        }
    }

    @Test
    void an_orientation_of_another_length_is_refused() {
        SensorStream stream = new VerticalScript().stand(1).stream(RATE, Quaternion.IDENTITY);
        OrientationTrack shorter = VerticalScript.still(stream.size() - 1, Quaternion.IDENTITY);
        assertThatIllegalArgumentException().isThrownBy(() -> new EventFinder().find(stream, shorter));
    }

    /** Free fall for {@code seconds} and a half-sine of 0.2 s that stops it. */
    private static VerticalScript drop(VerticalScript script, double seconds) {
        return script.fly(seconds).push(0.2, seconds * VerticalScript.G);
    }

    /** Crouch, push off at {@code speed}, fly, and stop on the same height; faster jumps take longer crouches. */
    private static VerticalScript jump(VerticalScript script, double speed) {
        double crouch = Math.min(0.8, 0.6 * speed);
        return script.push(0.25, -crouch)
                .push(0.35, crouch + speed)
                .fly(2 * speed / VerticalScript.G)
                .push(0.15, speed);
    }

    private static Quaternion anyRotation(SplittableRandom random) {
        double w = random.nextDouble(-1, 1);
        double x = random.nextDouble(-1, 1);
        double y = random.nextDouble(-1, 1);
        double z = random.nextDouble(-1, 1);
        double n = Math.sqrt(w * w + x * x + y * y + z * z);
        return new Quaternion(w / n, x / n, y / n, z / n);
    }
}
