package evenfall.fusion.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.sensor.SensorSignals;
import evenfall.fixtures.session.SessionScript;
import evenfall.fixtures.session.SyntheticSession;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What a recording does not hold is null with a flag, never a guess and never a failure. */
class BrokenRecordingsTest {

    private static final SyntheticSession SESSION = SessionScript.idealSensors(23)
            .openingRoutine()
            .drop(LandingPlan.fromHeight(0.5))
            .stand(3)
            .drop(LandingPlan.fromHeight(0.7))
            .stand(3)
            .record();

    private static final Posture NOTHING = new Posture(null, null, null, null, null, null, null);

    private static double contact(int k) {
        return SESSION.truth().get(k).contactS() - SESSION.pelvis().time()[0];
    }

    @Test
    void anUpperBackThatStartsAfterALanding_hasNoTrunkThere() {
        RecordingAnalysis analysis = analyse(
                stream(SESSION.pelvis(), 0, 1e9, true), stream(SESSION.upperBack(), contact(0) + 1.5, 1e9, true));

        assertThat(analysis.landings()).hasSize(2);
        Landing first = analysis.landings().get(0);
        assertThat(first.flags()).contains(LandingFlag.NO_UPPER_BACK);
        assertThat(measures(first).posture().trunkFlexion()).isNull();
        assertThat(measures(first).impact().peakUpperBackG()).isNull();
        assertThat(measures(first).posture().pelvicTilt()).isNotNull();
    }

    @Test
    void anUpperBackThatEndsWithinALanding_hasNoTrunkThere() {
        RecordingAnalysis analysis =
                analyse(stream(SESSION.pelvis(), 0, 1e9, true), stream(SESSION.upperBack(), 0, contact(1) + 0.3, true));

        Landing second = analysis.landings().get(1);
        assertThat(analysis.landings().get(0).flags()).doesNotContain(LandingFlag.NO_UPPER_BACK);
        assertThat(second.flags()).contains(LandingFlag.NO_UPPER_BACK);
        assertThat(measures(second).posture().twist()).isNull();
    }

    @Test
    void aGapOfTheUpperBack_isToldOfItsLandingAlone() {
        SensorStream upper = stream(SESSION.upperBack(), 0, 1e9, true);
        RecordingAnalysis analysis =
                analyse(stream(SESSION.pelvis(), 0, 1e9, true), without(upper, contact(1) + 0.1, contact(1) + 0.15));

        assertThat(analysis.landings().get(0).flags()).doesNotContain(LandingFlag.GAP);
        assertThat(analysis.landings().get(1).flags()).contains(LandingFlag.GAP);
    }

    @Test
    void aRecordingThatEndsWithinALanding_leavesOutWhatCameAfter() {
        double end = contact(1) + 0.08;
        RecordingAnalysis analysis =
                analyse(stream(SESSION.pelvis(), 0, end, true), stream(SESSION.upperBack(), 0, end, true));

        Landing last = analysis.landings().get(1);
        assertThat(last.flags()).contains(LandingFlag.CUT_SHORT, LandingFlag.NOT_SETTLED);
        assertThat(last.moments().lowestS()).isNull();
        assertThat(measures(last).posture()).isEqualTo(NOTHING);
        assertThat(measures(last).braking().depthM()).isNull();
        assertThat(measures(last).fall().impactSpeedMS()).isNotNull();
        assertThat(analysis.landings().get(0).flags()).doesNotContain(LandingFlag.CUT_SHORT);
    }

    /** Stamps that jitter lie beside the samples, some of them before: the last sample is still the last. */
    @Test
    void aRecordingThatEndsWhileThePelvisSinks_knowsNoLowest() {
        SensorSignals pelvis = SESSION.pelvis();
        SensorStream upper = stream(SESSION.upperBack(), 0, 1e9, true);
        double lowest = Objects.requireNonNull(
                second(stream(pelvis, 0, 1e9, true), upper).moments().lowestS());
        for (double end = contact(1) + 0.08; end < lowest - 0.02; end += 0.006) {
            Landing last = second(jittered(stream(pelvis, 0, end, true)), upper);
            assertThat(last.flags()).as("to %s", end).contains(LandingFlag.CUT_SHORT);
            assertThat(last.moments().lowestS()).as("to %s", end).isNull();
        }
    }

    /** Radios hand samples over several at once, stamped when the last was taken: half a packet late on average. */
    @Test
    void samplesThatComeFourAtOnce_tellTheSameLandings() {
        SensorStream pelvis = stream(SESSION.pelvis(), 0, 1e9, true);
        SensorStream upper = stream(SESSION.upperBack(), 0, 1e9, true);
        List<Landing> even = analyse(pelvis, upper).landings();
        List<Landing> together =
                analyse(inPackets(pelvis, 4), inPackets(upper, 4)).landings();

        assertThat(together).hasSameSizeAs(even);
        for (int k = 0; k < even.size(); k++) {
            assertThat(together.get(k).flags()).doesNotContain(LandingFlag.GAP);
            // Half a packet late, by a clock that begins with the first packet: three intervals after the first sample.
            double late = (1.5 - 3) / pelvis.rateHz();
            assertThat(together.get(k).moments().contactS())
                    .isCloseTo(even.get(k).moments().contactS() + late, within(0.0005));
            Measures one = measures(even.get(k));
            Measures other = measures(together.get(k));
            assertThat(other.braking().depthM()).isCloseTo(one.braking().depthM(), within(0.003));
            assertThat(tilt(other)).isCloseTo(tilt(one), within(0.1));
        }
    }

    /** More than a third of all samples is lost, one by one and several in a row. */
    @Test
    void aRadioThatLosesMuch_stillTellsTheLandings() {
        SensorStream whole = stream(SESSION.pelvis(), 0, 1e9, true);
        SplittableRandom random = new SplittableRandom(2);
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < whole.size(); i++) {
            if (random.nextDouble() >= 0.38) {
                builder.add(
                        whole.time(i), whole.ax(i), whole.ay(i), whole.az(i), whole.gx(i), whole.gy(i), whole.gz(i));
            }
        }
        List<Landing> landings = analyse(builder.build(), stream(SESSION.upperBack(), 0, 1e9, true))
                .landings();

        assertThat(landings).hasSize(2);
        for (int k = 0; k < 2; k++) {
            assertThat(landings.get(k).flags()).contains(LandingFlag.GAP);
            Double depth = measures(landings.get(k)).braking().depthM();
            Double sigma = measures(landings.get(k)).sigma().depthM();
            double off = Objects.requireNonNull(depth) - SESSION.truth().get(k).depthM();
            assertThat(Math.abs(off)).isLessThan(3 * Objects.requireNonNull(sigma) + 0.02);
        }
    }

    private static double tilt(Measures measures) {
        return Objects.requireNonNull(measures.posture().pelvicTilt()).change();
    }

    private static Landing second(SensorStream pelvis, SensorStream upper) {
        return analyse(pelvis, upper).landings().get(1);
    }

    private static SensorStream jittered(SensorStream s) {
        SplittableRandom random = new SplittableRandom(8);
        return stamped(s, i -> s.time(i) + random.nextDouble(-0.0004, 0.0004));
    }

    private static SensorStream inPackets(SensorStream s, int size) {
        return stamped(s, i -> s.time(Math.min(s.size() - 1, i / size * size + size - 1)));
    }

    /** The same samples with other stamps, s after the clock's start. */
    private static SensorStream stamped(SensorStream s, IntToDoubleFunction stamp) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < s.size(); i++) {
            double t = s.clockStartS() + stamp.applyAsDouble(i);
            builder.add(t, s.ax(i), s.ay(i), s.az(i), s.gx(i), s.gy(i), s.gz(i));
        }
        return builder.build();
    }

    @Test
    void anAccelerometerAxisThatIsStuck_turnsNoGyroscopeRound() {
        SensorStream whole = stream(SESSION.pelvis(), 0, 1e9, true);
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < whole.size(); i++) {
            builder.add(whole.time(i), whole.ax(i), 4.9, whole.az(i), whole.gx(i), whole.gy(i), whole.gz(i));
        }
        RecordingAnalysis analysis = analyse(builder.build(), stream(SESSION.upperBack(), 0, 1e9, true));

        assertThat(analysis.findings()).extracting(Finding::code).doesNotContain(FindingCode.GYRO_SENSE);
    }

    @Test
    void aDeadGyroscopeOfThePelvis_leavesTimesAndBlows() {
        RecordingAnalysis analysis =
                analyse(stream(SESSION.pelvis(), 0, 1e9, false), stream(SESSION.upperBack(), 0, 1e9, true));

        assertThat(analysis.landings()).isNotEmpty();
        for (Landing landing : analysis.landings()) {
            assertThat(landing.flags()).contains(LandingFlag.DEAD_SENSOR).doesNotContain(LandingFlag.NOT_SETTLED);
            assertThat(measures(landing).posture()).isEqualTo(NOTHING);
            assertThat(measures(landing).fall().dropHeightM()).isNull();
            assertThat(measures(landing).braking().meanBrakingG()).isNull();
            assertThat(measures(landing).impact().peakG()).isGreaterThan(1);
        }
    }

    @Test
    void aDeadGyroscopeOfTheUpperBack_leavesThePelvis() {
        RecordingAnalysis analysis =
                analyse(stream(SESSION.pelvis(), 0, 1e9, true), stream(SESSION.upperBack(), 0, 1e9, false));

        assertThat(analysis.landings()).hasSize(2);
        for (Landing landing : analysis.landings()) {
            assertThat(landing.flags()).contains(LandingFlag.DEAD_SENSOR, LandingFlag.NO_UPPER_BACK);
            assertThat(measures(landing).posture().trunkLean()).isNull();
            assertThat(measures(landing).braking().collapseDegPerS()).isNull();
            assertThat(measures(landing).posture().pelvicRotation()).isNotNull();
        }
    }

    @Test
    void aLongGapWithinTheBraking_leavesOutWhatItMayHide() {
        SensorStream whole = stream(SESSION.pelvis(), 0, 1e9, true);
        SensorStream pelvis = without(whole, contact(1) + 0.12, contact(1) + 0.28);

        Landing landing = analyse(pelvis, stream(SESSION.upperBack(), 0, 1e9, true))
                .landings()
                .get(1);

        Measures m = measures(landing);
        assertThat(landing.flags()).contains(LandingFlag.GAP).doesNotContain(LandingFlag.FEET_MOVED);
        assertThat(m.braking().depthM()).isNull();
        assertThat(m.sigma().depthM()).isNull();
        assertThat(m.balance().lateralShift()).isNull();
        assertThat(m.posture().pelvicTilt()).isNull();
        assertThat(m.posture().twist()).isNull();
        assertThat(m.posture().trunkFlexion()).isNotNull();
        assertThat(m.fall().impactSpeedMS()).isNotNull();
        assertThat(m.fall().flightS()).isNotNull();
    }

    private static SensorStream without(SensorStream s, double fromS, double toS) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < s.size(); i++) {
            if (s.time(i) < fromS || s.time(i) > toS) {
                builder.add(s.time(i), s.ax(i), s.ay(i), s.az(i), s.gx(i), s.gy(i), s.gz(i));
            }
        }
        return builder.build();
    }

    private static Measures measures(Landing landing) {
        return Objects.requireNonNull(landing.measures());
    }

    private static RecordingAnalysis analyse(SensorStream pelvis, SensorStream upperBack) {
        return new RecordingAnalyser(FilterKind.TWO_PASS)
                .analyse(
                        new Recording(
                                new SensorRecording("pelvis", pelvis, null, List.of()),
                                new SensorRecording("upper back", upperBack, null, List.of())),
                        Progress.NONE);
    }

    /** The samples from {@code fromS} to {@code toS} after the first, with or without their turn rates. */
    private static SensorStream stream(SensorSignals s, double fromS, double toS, boolean turning) {
        SensorStream.Builder builder = new SensorStream.Builder();
        double live = turning ? 1 : 0;
        for (int i = 0; i < s.size(); i++) {
            double t = s.time()[i] - s.time()[0];
            if (t >= fromS && t <= toS) {
                builder.add(
                        s.time()[i],
                        s.acceleration(0)[i],
                        s.acceleration(1)[i],
                        s.acceleration(2)[i],
                        live * s.turnRate(0)[i],
                        live * s.turnRate(1)[i],
                        live * s.turnRate(2)[i]);
            }
        }
        return builder.build();
    }
}
