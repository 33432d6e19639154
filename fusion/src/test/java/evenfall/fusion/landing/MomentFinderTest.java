package evenfall.fusion.landing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.event.Event;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.posture.Motion;
import evenfall.fusion.posture.MotionWindow;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Contact in forces along the vertical whose contact is known: flight from 0.7 s to 1 s, forces as shares of the weight. */
class MomentFinderTest {

    private static final double TAKEOFF_S = 0.7;
    private static final double CONTACT_S = 1;
    private static final double END_S = 3;

    /** Legs that reach down first pull the pelvis, then push it, by up to half the weight: slowly beside what feet do. */
    @ParameterizedTest
    @CsvSource({"100, 0.25", "100, 0.45", "200, 0.25", "200, 0.45", "400, 0.25", "400, 0.45"})
    void legsThatReachDownInFlight_areNoContact(double rateHz, double size) {
        assertThat(contact(rateHz, t -> size * Math.sin(2 * Math.PI * t / 0.2 - 1.5 * Math.PI)))
                .isCloseTo(CONTACT_S, within(0.006));
    }

    /** A step in the flight that is as steep as a contact, but after which nothing carries for a tenth of a second. */
    @ParameterizedTest
    @ValueSource(doubles = {100, 200, 400})
    void aStepOfTheForceThatCarriesNoWeight_isNoContact(double rateHz) {
        assertThat(contact(rateHz, t -> t < 0.18 ? -0.3 : 0.15)).isCloseTo(CONTACT_S, within(0.006));
    }

    @ParameterizedTest
    @ValueSource(doubles = {100, 200, 400})
    void freeFall_endsWithContact(double rateHz) {
        assertThat(contact(rateHz, t -> 0)).isCloseTo(CONTACT_S, within(0.006));
    }

    /** The contact found, with the given force in flight. */
    private static double contact(double rateHz, DoubleUnaryOperator flight) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < END_S * rateHz; i++) {
            double t = i / rateHz;
            builder.add(t, 0, 0, Gravity.STANDARD * force(t, flight), 0, 0, 0);
        }
        SensorStream stream = builder.build();
        Motion motion = Motion.of(new MotionWindow(
                stream, 0, stream.size(), Quaternion.IDENTITY, 0.01, 0.01, Vector3.ZERO, 0.001, List.of(), List.of()));
        // The event's moments are smoothed: contact up to 0.1 s early.
        Event event = new Event(EventKind.LANDING, 1, TAKEOFF_S, CONTACT_S - 0.02, CONTACT_S + 0.05, CONTACT_S + 0.2);
        return new MomentFinder(motion, event, END_S, Vector3.ZERO).find().contactS();
    }

    /** A landing of four times the weight within 0.03 s, on top of what the force in flight was. */
    private static double force(double t, DoubleUnaryOperator flight) {
        if (t < TAKEOFF_S) {
            return 1;
        }
        if (t < CONTACT_S) {
            return flight.applyAsDouble(t - TAKEOFF_S);
        }
        double since = t - CONTACT_S;
        double last = flight.applyAsDouble(CONTACT_S - TAKEOFF_S) * Math.exp(-since / 0.02);
        return last + (since < 0.16 ? 4 * Math.sin(Math.PI * Math.min(since, 0.12) / 0.12) + since / 0.16 : 1);
    }
}
