package evenfall.fusion.landing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.alignment.StrapGive;
import evenfall.fusion.event.Event;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.posture.MotionSmoother;
import evenfall.fusion.posture.MotionWindow;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Measures of a body that falls freely and is stopped by a force of closed form, against the formulas of free fall and of work
 * and energy: v = sqrt(2 g h), t = sqrt(2 h / g), h = g t² / 2, mean force / weight = 1 + h / d, worked out with NumPy
 * (cases H1 to H4).
 */
class ReferenceLandingTest {

    private static final double GRAVITY = 9.80665;
    private static final double RATE = 400;
    private static final double STAND_S = 2;

    /** A foot is told from ringing by this much force, g. */
    private static final double CONTACT_LEVEL = 0.35;
    /** Half a sine that stops a fall takes so long, s. */
    private static final double STOP_S = 0.2;

    private static Landing measure(double fallS, double stopS, DoubleUnaryOperator stopG) {
        double contact = STAND_S + fallS;
        SensorStream.Builder builder = new SensorStream.Builder();
        int n = (int) Math.round((contact + stopS + STAND_S) * RATE);
        for (int i = 0; i <= n; i++) {
            double t = i / RATE;
            double g = t < STAND_S || t >= contact + stopS ? 1 : t < contact ? 0 : stopG.applyAsDouble(t - contact);
            // A gyroscope that shows nothing at all would be taken for dead; turning about the vertical changes no
            // height.
            builder.add(t, 0, 0, GRAVITY * g, 0, 0, 0.02 * Math.sin(20 * t));
        }
        SensorStream stream = builder.build();
        List<MotionWindow.Rest> rests = new ArrayList<>();
        for (int i = 0; i <= n; i += 80) {
            double t = i / RATE;
            if (t < STAND_S - 0.05 || t > contact + stopS + 0.05) {
                rests.add(new MotionWindow.Rest(i, 0.016));
            }
        }
        MotionWindow window = new MotionWindow(
                stream, 0, stream.size(), Quaternion.IDENTITY, 0.01, 0.01, Vector3.ZERO, 0.001, rests, List.of());
        LandingScene.Body body = new LandingScene.Body(
                new MotionSmoother(List.of(window)).motion(0), Quaternion.IDENTITY, 0, StrapGive.NONE, true);
        Event event = new Event(EventKind.LANDING, 1, STAND_S, contact + 0.01, contact + stopS / 2, contact + stopS);
        LandingScene scene = new LandingScene(event, stream.durationS(), 0, STAND_S, null, body, null, null, Set.of());
        return LandingMeasurer.measure(scene, 1).landing();
    }

    private static double speed(double height) {
        return Math.sqrt(2 * GRAVITY * height);
    }

    /** Top of half a sine, g, whose impulse takes the speed of the fall and carries the weight meanwhile. */
    private static double top(double fallS) {
        return (fallS + STOP_S) * Math.PI / (2 * STOP_S);
    }

    private static Landing stoppedByASine(double fallS) {
        return measure(fallS, STOP_S, t -> top(fallS) * Math.sin(Math.PI * t / STOP_S));
    }

    /** The body falls on while the force rises to the level at which contact is told, and a sample at take-off is lost. */
    private static double speedTolerance(double fallS) {
        double slope = top(fallS) * Math.PI / STOP_S;
        return GRAVITY * (CONTACT_LEVEL / slope + 1 / RATE);
    }

    /** The table of case H1; 0.32, 0.62 and 1.03 m with 2.5, 3.5 and 4.5 m/s are Zhang, Bates and Dufek 2000, MSSE 32:812. */
    @ParameterizedTest
    @CsvSource({
        "0.20, 1.9806, 0.2020, 0.0001", "0.30, 2.4257, 0.2474, 0.0001", "0.40, 2.8009, 0.2856, 0.0001",
        "0.45, 2.9709, 0.3029, 0.0001", "0.50, 3.1316, 0.3193, 0.0001", "0.60, 3.4304, 0.3498, 0.0001",
        "0.75, 3.8354, 0.3911, 0.0001", "0.90, 4.2014, 0.4284, 0.0001", "1.00, 4.4287, 0.4516, 0.0001",
        "1.20, 4.8514, 0.4947, 0.0001", "1.50, 5.4240, 0.5531, 0.0001", "2.00, 6.2631, 0.6387, 0.0001",
        "0.32, 2.5, 0.2555, 0.05", "0.62, 3.5, 0.3556, 0.05", "1.03, 4.5, 0.4583, 0.05"
    })
    void impactSpeedAndDropHeight_areThoseOfFreeFall(double height, double speed, double fallS, double rounding) {
        Fall fall = Objects.requireNonNull(
                        stoppedByASine(speed(height) / GRAVITY).measures())
                .fall();

        double tolerance = speedTolerance(fallS);
        double measured = Objects.requireNonNull(fall.impactSpeedMS());
        assertThat(measured).isCloseTo(speed, within(tolerance + rounding));
        double drop = Objects.requireNonNull(fall.dropHeightM());
        assertThat(drop).isCloseTo(height, within(fallS * (tolerance + rounding)));
        // what is said of both has to agree to the last digit
        assertThat(drop).isCloseTo(measured * measured / (2 * GRAVITY), within(1e-9));
        assertThat(measured / GRAVITY).isCloseTo(fallS, within(tolerance / GRAVITY + rounding));
    }

    /** Case H2: a fall of a known time; from a jump of the same flight it would be a quarter. */
    @ParameterizedTest
    @CsvSource({"0.35, 0.60066", "0.5, 1.22583"})
    void dropHeight_ofAFallOfKnownTime(double fallS, double height) {
        Landing landing = stoppedByASine(fallS);

        assertThat(Objects.requireNonNull(
                        Objects.requireNonNull(landing.measures()).fall().dropHeightM()))
                .isCloseTo(height, within(speedTolerance(fallS) * fallS));
    }

    /** Case H3: a steady force stops a fall of h over d with 1 + h / d body weights in 2 d / v. */
    @ParameterizedTest
    @CsvSource({"0.6, 0.4, 2.5, 0.2332", "1.0, 0.5, 3.0, 0.2258"})
    void meanBraking_ofASteadyStop(double height, double depth, double braking, double stopS) {
        Landing landing = measure(speed(height) / GRAVITY, stopS, t -> braking);

        Braking measured = Objects.requireNonNull(landing.measures()).braking();
        // A sample at either end of the stop, at the speed of the fall.
        double sample = 2 * speed(height) / RATE;
        assertThat(Objects.requireNonNull(measured.depthM())).isCloseTo(depth, within(sample));
        assertThat(Objects.requireNonNull(measured.meanBrakingG()))
                .isCloseTo(braking, within(height / depth * sample / depth));
        assertThat(Objects.requireNonNull(measured.brakingS())).isCloseTo(stopS, within(2 / RATE));
    }

    /** Case H4: 0.35 s of fall, then half a sine of 0.2 s with a top of 4.3197 g. */
    @Test
    void aSyntheticLanding_isCaseH4() {
        double fallS = 0.35;
        double speed = 3.432327;
        Landing landing = stoppedByASine(fallS);

        Measures m = Objects.requireNonNull(landing.measures());
        double contact = STAND_S + fallS;
        assertThat(landing.moments().contactS()).isCloseTo(contact, within(2 / RATE));
        assertThat(landing.moments().peakS()).isCloseTo(contact + STOP_S / 2, within(1 / RATE));
        // For the last 30.0 ms the force is less than what stops the body: the sine's impulse equals the weight's
        // there.
        double rising = 0.0300;
        assertThat(Objects.requireNonNull(landing.moments().lowestS()))
                .isCloseTo(contact + STOP_S - rising, within(1 / RATE));
        assertThat(m.impact().peakG()).isCloseTo(4.319690, within(0.001));
        assertThat(Objects.requireNonNull(m.fall().impactSpeedMS())).isCloseTo(speed, within(speedTolerance(fallS)));
        assertThat(Objects.requireNonNull(m.fall().dropHeightM()))
                .isCloseTo(0.600657, within(speedTolerance(fallS) * fallS));
        assertThat(Objects.requireNonNull(m.braking().depthM())).isCloseTo(0.343233, within(2 * speed / RATE));
    }
}
