package evenfall.fusion.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.recording.SensorStream;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Landings out of the ordinary, in closed form; expected speeds follow from free fall (reference sheet 4.1). */
final class OddLandingsTest {

    private static final double RATE = 200;

    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.045, 0.06})
    void a_low_drop_whose_contact_lies_in_a_gap_is_found(double hiddenFlight) {
        // 0.22 s of fall are 2.16 m/s; the gap ends 28 ms after contact, with the force near its peak.
        VerticalScript script = new VerticalScript().stand(3).fly(0.22);
        double contact = script.end();
        SensorStream whole = script.push(0.1, 0.22 * VerticalScript.G).stand(3).stream(RATE, Quaternion.IDENTITY);
        SensorStream stream = seen(whole, contact, t -> t < -hiddenFlight || t > 0.028);
        List<Descent> descents = EventFinder.descents(stream, VerticalScript.still(stream.size(), Quaternion.IDENTITY));
        assertThat(descents)
                .singleElement()
                .satisfies(d -> assertThat(d.down()).isCloseTo(0.22 * VerticalScript.G, within(0.2)));
        assertThat(new LandingRules(EventParams.DEFAULT, descents).verdicts()).containsExactly(Verdict.LANDING);
    }

    /** Two thirds of the speed are gone in a tenth of a second, the last third takes the rest of a second. */
    @Test
    void a_low_drop_with_a_hard_half_of_a_brake_and_a_slow_one_is_a_landing() {
        VerticalScript script =
                new VerticalScript().stand(2).fly(0.24).push(0.1, 1.6).push(0.45, 0.24 * VerticalScript.G - 1.6);
        assertThat(script.stand(3).events(RATE, Quaternion.IDENTITY))
                .extracting(Event::kind)
                .containsExactly(EventKind.LANDING);
    }

    /** Of the flight there are few samples left. */
    @Test
    void a_low_drop_with_two_gaps_in_its_flight_is_a_landing() {
        VerticalScript script = new VerticalScript().stand(2).fly(0.21);
        double contact = script.end();
        SensorStream whole = script.push(0.15, 0.21 * VerticalScript.G).stand(3).stream(RATE, Quaternion.IDENTITY);
        SensorStream stream = seen(whole, contact, t -> t < -0.152 || (t > -0.077 && t < -0.061) || t > 0.014);
        assertThat(new EventFinder().find(stream, VerticalScript.still(stream.size(), Quaternion.IDENTITY)))
                .extracting(Event::kind)
                .containsExactly(EventKind.LANDING);
    }

    @Test
    void a_jump_in_which_the_pelvis_tips_far_is_a_landing() {
        VerticalScript script =
                new VerticalScript().stand(2).push(0.25, -0.8).push(0.35, 2.5).fly(0.347);
        double contact = script.end();
        script.push(0.15, 1.7).stand(3);
        assertThat(script.events(RATE, tipping(36, contact - 0.2, contact + 0.3, contact + 1)))
                .extracting(Event::kind)
                .containsExactly(EventKind.LANDING);
    }

    @Test
    void a_landing_that_goes_on_into_a_sit_on_the_floor_ends_off_the_feet() {
        assertThat(landingThenSinking(1.6, 38)).containsExactly(EventKind.FALL);
    }

    @Test
    void a_landing_held_leaning_or_followed_by_an_upright_sinking_is_a_landing() {
        assertThat(landingThenSinking(0, 38)).containsExactly(EventKind.LANDING);
        assertThat(landingThenSinking(1.6, 10)).containsExactly(EventKind.LANDING);
    }

    /** Steps off at 0.3 s of flight, then goes down at {@code speed}, and stays tipped by {@code degrees}. */
    private static List<EventKind> landingThenSinking(double speed, double degrees) {
        VerticalScript script = new VerticalScript().stand(3).fly(0.3).push(0.2, 0.3 * VerticalScript.G);
        double landed = script.end();
        script.stand(0.15).push(0.4, -speed).push(0.5, speed).stand(3);
        return script.events(RATE, tipping(degrees, landed, landed + 1, Double.POSITIVE_INFINITY)).stream()
                .map(Event::kind)
                .toList();
    }

    @Test
    void a_slight_hop_that_lands_lower_than_it_began_catches_the_landing() {
        // The crouch is deep: up 0.62, down 0.95 m/s, which is 0.57 of the speed the drop has gained.
        VerticalScript script = new VerticalScript().stand(2).fly(0.28).push(0.2, 0.28 * VerticalScript.G);
        double after = script.end();
        script.stand(0.4).push(0.25, 0.62).fly(0.16).push(0.15, 0.95).stand(2);
        assertThat(script.events(RATE, Quaternion.IDENTITY))
                .singleElement()
                .satisfies(event -> assertThat(event.peakS()).isLessThan(after));
    }

    @Test
    void a_jump_from_standing_soon_after_a_landing_is_one_of_its_own() {
        VerticalScript script = new VerticalScript()
                .stand(2)
                .fly(0.35)
                .push(0.2, 0.35 * VerticalScript.G)
                .stand(0.5);
        script.push(0.25, -0.6)
                .push(0.35, 1.8)
                .fly(2 * 1.2 / VerticalScript.G)
                .push(0.15, 1.2)
                .stand(2);
        assertThat(script.events(RATE, Quaternion.IDENTITY))
                .extracting(Event::kind)
                .containsExactly(EventKind.LANDING, EventKind.LANDING);
    }

    @Test
    void skipping_on_the_spot_is_a_run_of_steps() {
        VerticalScript script = new VerticalScript().stand(2).push(0.2, -0.5).push(0.2, 1.8);
        for (int i = 0; i < 10; i++) {
            script.fly(2 * 1.3 / VerticalScript.G).push(0.16, 2.6);
        }
        script.fly(2 * 1.3 / VerticalScript.G).push(0.16, 1.3).stand(2);
        assertThat(script.events(RATE, Quaternion.IDENTITY))
                .singleElement()
                .satisfies(event -> assertThat(event.kind()).isEqualTo(EventKind.STEPS));
    }

    /** The samples of a stream whose time since contact, s, is one of these. */
    private static SensorStream seen(SensorStream whole, double contact, DoublePredicate times) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < whole.size(); i++) {
            if (times.test(whole.time(i) - contact)) {
                builder.add(whole.time(i), whole.ax(i), whole.ay(i), whole.az(i), 0, 0, 0);
            }
        }
        return builder.build();
    }

    /** Upright, then to {@code degrees} from {@code from} to {@code to}, and back within 0.5 s at {@code back}. */
    private static DoubleUnaryOperator tipping(double degrees, double from, double to, double back) {
        return t -> Math.toRadians(degrees) * (ramp((t - from) / (to - from)) - ramp((t - back) / 0.5));
    }

    private static double ramp(double x) {
        return x <= 0 ? 0 : x >= 1 ? 1 : (1 - Math.cos(Math.PI * x)) / 2;
    }
}
