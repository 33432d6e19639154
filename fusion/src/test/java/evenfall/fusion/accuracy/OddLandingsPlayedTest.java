package evenfall.fusion.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fixtures.motion.BendPlan;
import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.motion.LandingQuantity;
import evenfall.fixtures.motion.MotionScript;
import evenfall.fixtures.motion.Side;
import evenfall.fixtures.motion.StepAfter;
import evenfall.fixtures.session.SessionScript;
import evenfall.fixtures.session.SyntheticSession;
import evenfall.fixtures.truth.LandingTruth;
import evenfall.fusion.alignment.MountingMethod;
import evenfall.fusion.analysis.RecordingAnalyser;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Landings out of the ordinary on the synthesiser, analysed as a whole and while they are played. */
final class OddLandingsPlayedTest {

    private static final double BLOCK_S = 0.04;

    /** The synthesiser's feet touch so softly that the softest of these contacts is found 10 ms late (method page). */
    private static final double CONTACT_S = 0.012;

    /** What that lag costs: g and the fall's 3.1 m/s over it. */
    private static final double SPEED_MS = 0.1;

    private static final double DEPTH_M = 0.035;

    /** How somebody lands. */
    enum Odd {
        STIFF,
        SOFT,
        LEFT_FOOT,
        RIGHT_FOOT,
        STEP_BACK,
        STEP_ASIDE,
        JUMP_SOON_AFTER
    }

    private static void act(MotionScript script, Odd odd) {
        LandingPlan usual = LandingPlan.fromHeight(0.5);
        switch (odd) {
            case STIFF ->
                script.drop(usual.with(LandingQuantity.DEPTH, 0.12).with(LandingQuantity.FIRST_PULSE_SHARE, 0.7));
            case SOFT ->
                script.drop(usual.with(LandingQuantity.DEPTH, 0.45).with(LandingQuantity.FIRST_PULSE_SHARE, 0.1));
            case LEFT_FOOT -> script.drop(usual.on(Side.LEFT));
            case RIGHT_FOOT -> script.drop(usual.on(Side.RIGHT));
            case STEP_BACK -> script.drop(usual.then(StepAfter.BACK));
            case STEP_ASIDE -> script.drop(usual.then(StepAfter.LEFT));
            case JUMP_SOON_AFTER -> script.drop(usual, 0.6).jump(LandingPlan.usual(), 2.5);
        }
    }

    @ParameterizedTest
    @EnumSource
    void isFoundAndRight_asAWholeAndWhilePlayed(Odd odd) {
        SyntheticSession session = SessionScript.idealSensors(17)
                .openingRoutine()
                .act(script -> act(script, odd))
                .stand(3)
                .record();
        Recording recording = SyntheticStreams.recording(session);
        check(
                new RecordingAnalyser(FilterKind.TWO_PASS)
                        .analyse(recording, Progress.NONE)
                        .landings(),
                session);
        LivePlay play = LivePlay.of(recording, BLOCK_S);
        assertThat(play.falls()).isEmpty();
        check(play.landings().stream().map(LivePlay.Told::landing).toList(), session);
    }

    /** Squats tip the body as bends do, but less and with the knees: the routine's bends after them are taken. */
    @Test
    void squatsBeforeTheRoutine_areNoBends() {
        RecordingAnalysis analysis = afterSquats(2);
        assertThat(analysis.mounting().values())
                .allSatisfy(mounting -> assertThat(mounting.method()).isEqualTo(MountingMethod.BEND));
        assertThat(lean(analysis).change()).isCloseTo(8, within(0.4));
    }

    /** Bends of 0.8 s each way are too quick for the upper back's sensor: that is said, and sigma grows. */
    @Test
    void bendsTooQuick_areSaidAndNotSilentlyWrong() {
        RecordingAnalysis analysis = afterSquats(0.8);
        assertThat(analysis.findings()).extracting(Finding::code).contains(FindingCode.NO_OPENING_ROUTINE);
        Excursion lean = lean(analysis);
        assertThat(Math.abs(lean.change() - 8)).isLessThan(2 * lean.sigma());
    }

    private static RecordingAnalysis afterSquats(double bendS) {
        BendPlan bend = new BendPlan(42, 32, 0, 0, bendS, 0.1);
        SyntheticSession session = SessionScript.idealSensors(17)
                .act(script -> script.stand(4).squat(0.4).stand(1).squat(0.4).stand(4))
                .act(script -> script.bend(bend).stand(1.2).bend(bend).stand(2))
                .drop(LandingPlan.fromHeight(0.5).with(LandingQuantity.TRUNK_LEAN, 8))
                .stand(3)
                .record();
        RecordingAnalysis analysis =
                new RecordingAnalyser(FilterKind.TWO_PASS).analyse(SyntheticStreams.recording(session), Progress.NONE);
        check(analysis.landings(), session);
        return analysis;
    }

    private static Excursion lean(RecordingAnalysis analysis) {
        Measures m = Objects.requireNonNull(analysis.landings().get(0).measures());
        return Objects.requireNonNull(m.posture().trunkLean());
    }

    private static void check(List<Landing> landings, SyntheticSession session) {
        List<LandingTruth> truths = session.truth();
        double start = session.pelvis().time()[0];
        assertThat(landings).hasSameSizeAs(truths);
        for (int k = 0; k < truths.size(); k++) {
            LandingTruth truth = truths.get(k);
            Measures m = Objects.requireNonNull(landings.get(k).measures());
            assertThat(landings.get(k).moments().contactS()).isCloseTo(truth.contactS() - start, within(CONTACT_S));
            assertThat(m.fall().impactSpeedMS()).isCloseTo(truth.impactSpeedMS(), within(SPEED_MS));
            assertThat(m.impact().peakG()).isCloseTo(truth.peakG(), within(0.02 * truth.peakG()));
            assertThat(Objects.requireNonNull(m.braking().depthM())).isCloseTo(truth.depthM(), within(DEPTH_M));
            assertThat(m.balance().stepsAfter()).isEqualTo(truth.stepsAfter());
            if (truth.stepsAfter() > 0) {
                assertThat(m.balance().overFeet()).isNull();
                assertThat(landings.get(k).flags()).contains(LandingFlag.FEET_MOVED);
            }
        }
    }
}
