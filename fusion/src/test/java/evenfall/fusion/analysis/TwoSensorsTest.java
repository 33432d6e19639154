package evenfall.fusion.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.sensor.Mount;
import evenfall.fixtures.sensor.SensorModel;
import evenfall.fixtures.sensor.SensorSignals;
import evenfall.fixtures.sensor.Slip;
import evenfall.fixtures.sensor.Triple;
import evenfall.fixtures.session.SessionScript;
import evenfall.fixtures.session.SyntheticSession;
import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingMeasurer;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Two sensors that do not belong together, or that do not come at once. */
class TwoSensorsTest {

    private static SyntheticSession session(int seed, int drops) {
        Random random = new Random(seed);
        SessionScript script = SessionScript.cheapSensors(seed).openingRoutine();
        for (int k = 0; k < drops; k++) {
            script.drop(LandingPlan.fromHeight(0.3 + 0.5 * random.nextDouble())).stand(1 + 3 * random.nextDouble());
        }
        return script.record();
    }

    @Test
    void anUpperBackOfAnotherSession_isNotTied() {
        RecordingAnalysis analysis = Sessions.analyse(
                Sessions.recorded(session(3, 8).pelvis()),
                Sessions.recorded(session(4, 9).upperBack()));

        assertThat(analysis.clock()).isNull();
        assertThat(analysis.findings()).extracting(Finding::code).contains(FindingCode.CLOCK_UNCERTAIN);
    }

    @Test
    void oneRecordingGivenTwice_isToldAndHasNoTrunk() {
        SyntheticSession session = session(5, 3);
        RecordingAnalysis analysis =
                Sessions.analyse(Sessions.recorded(session.pelvis()), Sessions.recorded(session.pelvis()));

        assertThat(analysis.clock()).isNull();
        assertThat(analysis.findings()).extracting(Finding::code).contains(FindingCode.NO_UPPER_BACK);
        assertThat(analysis.landings())
                .hasSize(3)
                .allSatisfy(landing -> assertThat(Objects.requireNonNull(landing.measures())
                                .posture()
                                .trunkFlexion())
                        .isNull());
    }

    /** Half an hour, of which the one sensor missed more than what the first guess looks at. */
    @Test
    void aSensorThatWasSwitchedOnTwentyMinutesLate_isTied() {
        SyntheticSession session = session(7, 100);
        SensorSignals upper = session.upperBack();
        double late = upper.time()[0] + 1300;
        ClockMap whole =
                Objects.requireNonNull(Sessions.analyse(Sessions.recorded(session.pelvis()), Sessions.recorded(upper))
                        .clock());
        ClockMap tied = Objects.requireNonNull(Sessions.analyse(
                        Sessions.recorded(session.pelvis()), Sessions.recorded(upper, late, Double.POSITIVE_INFINITY))
                .clock());

        assertThat(tied.toUpperBack(1500) + 1300).isCloseTo(whole.toUpperBack(1500), within(0.01));
    }

    /** A strap that turns about the vertical is told by the landings of both sensors, and the one has seen fewer. */
    @Test
    void anUpperBackThatJoinsLate_isTakenAlong() {
        SessionScript script = SessionScript.idealSensors(11).openingRoutine();
        double slip = 0;
        for (int k = 0; k < 8; k++) {
            slip = k == 4 ? script.now() + 0.5 : slip;
            script.drop(LandingPlan.fromHeight(0.5)).stand(3);
        }
        SyntheticSession session = script.pelvisSensor(SensorModel.ideal(200)
                        .withMount(Mount.aligned().withSlip(new Slip(slip, new Triple(0, 0, 1), 15))))
                .record();
        double joins = session.truth().get(1).contactS() + 9;

        List<Landing> told = play(new LiveAnalyser(), session.pelvis(), session.upperBack(), joins);

        assertThat(told).hasSize(8);
        assertThat(Objects.requireNonNull(told.get(7).measures()).posture().trunkFlexion())
                .isNotNull();
    }

    @Test
    void anotherSensorAtThePelvissPlace_isFollowedFromItsStart() {
        LiveAnalyser live = new LiveAnalyser();
        SyntheticSession first = session(11, 3);
        SyntheticSession second = session(12, 3);

        assertThat(play(live, first.pelvis(), null, 0)).hasSize(3);
        assertThat(play(live, second.pelvis(), null, 0)).hasSize(3);
        assertThat(live.opening().bends().get(Place.PELVIS)).isEqualTo(2);
        assertThat(live.level(Place.PELVIS)).isNotNull();
    }

    private static List<Landing> play(
            LiveAnalyser live, SensorSignals pelvis, @Nullable SensorSignals upperBack, double joinsS) {
        List<Landing> told = new ArrayList<>();
        double end = pelvis.time()[pelvis.size() - 1];
        for (double now = pelvis.time()[0] + 1; now < end; now += 0.25) {
            Recording soFar = new Recording(
                    Sessions.recorded(pelvis, 0, now),
                    upperBack == null || now < joinsS ? null : Sessions.recorded(upperBack, 0, now));
            live.advance(soFar).landings().stream()
                    .map(LandingMeasurer.Measured::landing)
                    .forEach(told::add);
        }
        return told;
    }
}
