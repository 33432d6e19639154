package evenfall.fusion.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fixtures.motion.BendPlan;
import evenfall.fixtures.motion.BodyMotion;
import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.motion.LandingQuantity;
import evenfall.fixtures.motion.MotionScript;
import evenfall.fixtures.motion.Side;
import evenfall.fixtures.motion.StepAfter;
import evenfall.fixtures.session.SessionScript;
import evenfall.fixtures.session.SyntheticSession;
import evenfall.fixtures.truth.BodyAngle;
import evenfall.fixtures.truth.LandingTruth;
import evenfall.fusion.alignment.MountingMethod;
import evenfall.fusion.analysis.RecordingAnalyser;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Landings out of the ordinary on the synthesiser, analysed as a whole and while they are played. */
final class OddLandingsPlayedTest {

    private static final double BLOCK_S = 0.04;

    /** The synthesiser's feet touch so softly that the softest of these contacts is found 10 ms late (method page). */
    private static final double CONTACT_S = 0.012;

    /** What that lag costs: g and the fall's 3.1 m/s over it. */
    private static final double SPEED_MS = 0.1;

    private static final double DEPTH_M = 0.035;

    /** Three sigmas, but no less than this: what angles of the simulated sessions at contact err by (accuracy page). */
    private static final double ANGLE_DEG = 0.2;

    /** How somebody lands. */
    enum Odd {
        STIFF,
        SOFT,
        LEFT_FOOT,
        RIGHT_FOOT,
        STEP_BACK,
        STEP_ASIDE,
        JUMP_SOON_AFTER,
        OTHER_FOOT_40_MS_LATER,
        OTHER_FOOT_80_MS_LATER,
        HOP_OUT_OF_THE_CROUCH,
        TWO_DROPS_IN_QUICK_SUCCESSION,
        NO_STANCE_BEFORE,
        SITS_DOWN_ON_THE_FLOOR
    }

    /** What is no drop. */
    enum Gait {
        STAIRS,
        QUICK_STAIRS,
        RUNNING,
        SKIPPING,
        ROPE
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
            case OTHER_FOOT_40_MS_LATER ->
                script.drop(usual.with(LandingQuantity.FIRST_PULSE_SHARE, 0.25)).withOtherFootAfter(0.04, Side.LEFT);
            case OTHER_FOOT_80_MS_LATER ->
                script.drop(usual.with(LandingQuantity.FIRST_PULSE_SHARE, 0.25)).withOtherFootAfter(0.08, Side.RIGHT);
            case HOP_OUT_OF_THE_CROUCH ->
                script.drop(usual.with(LandingQuantity.RECOVERY_SECONDS, 0.5), 0)
                        .hoppingOn(0.5);
            case TWO_DROPS_IN_QUICK_SUCCESSION -> twoDrops(script);
            case NO_STANCE_BEFORE -> script.walkOff(usual, 2.5);
            case SITS_DOWN_ON_THE_FLOOR -> script.drop(usual, 3).endingInSit();
        }
    }

    /** From one box onto a lower one and off it, 1.4 s later. */
    private static void twoDrops(MotionScript script) {
        LandingPlan each = LandingPlan.fromHeight(0.4).with(LandingQuantity.RECOVERY_SECONDS, 0.5);
        script.turn(180).walk(2).turn(180).climb(0.45).climb(0.45).stand(2);
        script.stepDown(each, -0.4).stepDown(each, 2.5);
    }

    private static void act(MotionScript script, Gait gait) {
        switch (gait) {
            case STAIRS -> script.climb(1).stand(1).stairsDown(6, 0.17, 0.55);
            case QUICK_STAIRS -> script.climb(1).stand(1).stairsDown(6, 0.17, 0.36);
            case RUNNING -> script.bounces(3, 0.22, 0.1, 0.12, 0.12, 0.12, 0.12, 0.12, 0.12, 0.1);
            case SKIPPING -> script.bounces(2, 0.22, 0.15, 0.04, 0.25, 0.04, 0.25, 0.04, 0.25, 0.04, 0.25, 0.04, 0.15);
            case ROPE -> script.bounces(0, 0.2, 0.2, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.2);
        }
    }

    @ParameterizedTest
    @EnumSource
    void isFoundAndRight_asAWholeAndWhilePlayed(Odd odd) {
        SyntheticSession session = session(script -> act(script, odd));
        Recording recording = SyntheticStreams.recording(session);
        check(all(recording), session);
        LivePlay play = LivePlay.of(recording, BLOCK_S);
        assertThat(play.falls()).isEmpty();
        check(play.landings().stream().map(LivePlay.Told::landing).toList(), session);
    }

    @ParameterizedTest
    @EnumSource
    void isNoDrop(Gait gait) {
        Recording recording = record(script -> act(script, gait));
        assertThat(landings(recording)).isEmpty();
        LivePlay play = LivePlay.of(recording, BLOCK_S);
        assertThat(play.landings()).isEmpty();
        assertThat(play.falls()).isEmpty();
    }

    @Test
    void landingThatEndsInARoll_isAFall() {
        SyntheticSession session =
                session(script -> script.drop(LandingPlan.fromHeight(0.5), 3).endingInRoll());
        Recording recording = SyntheticStreams.recording(session);
        double contact = session.truth().get(0).contactS() - session.pelvis().time()[0];
        assertThat(all(recording))
                .singleElement()
                .satisfies(fall -> assertThat(fall.kind()).isEqualTo(EventKind.FALL))
                .satisfies(fall -> assertThat(fall.moments().contactS()).isCloseTo(contact, within(CONTACT_S)));
        LivePlay play = LivePlay.of(recording, BLOCK_S);
        assertThat(play.landings()).isEmpty();
        assertThat(play.falls()).singleElement().satisfies(at -> assertThat(at).isCloseTo(contact, within(CONTACT_S)));
    }

    /** A jump of 0.5 s out of a run, landed and stood, is a landing; between strides it is one, or steps. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void runningJump_isRightAndFlaggedOrSteps(boolean stood) {
        double[] run = {0.1, 0.12, 0.12, 0.12, 0.5};
        double[] runOn = {0.1, 0.12, 0.12, 0.12, 0.5, 0.12, 0.12, 0.1, 0.1};
        Recording recording = record(script -> script.bounces(3, 0.24, stood ? run : runOn));
        List<Landing> whole = landings(recording);
        assertThat(whole).hasSizeLessThan(2);
        List<Landing> told = LivePlay.of(recording, BLOCK_S).landings().stream()
                .map(LivePlay.Told::landing)
                .toList();
        assertThat(told).hasSizeLessThan(2);
        for (Landing landing : Stream.concat(whole.stream(), told.stream()).toList()) {
            assertThat(landing.flags()).contains(LandingFlag.NO_QUIET_START);
            Measures m = Objects.requireNonNull(landing.measures());
            double speed = BodyMotion.GRAVITY * 0.5 / 2;
            assertThat(m.fall().impactSpeedMS())
                    .isCloseTo(
                            speed, within(3 * Objects.requireNonNull(m.sigma().impactSpeedMS())));
        }
    }

    /** Each is told and flagged: no step flies for 0.4 s. Of the middle one alone the speed is not known, and sigma says so. */
    @ParameterizedTest
    @EnumSource
    void severalJumpsInARow_areAllToldAndFlagged(Jumps jumps) {
        Recording recording = record(script -> act(script, jumps));
        List<Landing> whole = landings(recording);
        List<Landing> live = LivePlay.of(recording, BLOCK_S).landings().stream()
                .map(LivePlay.Told::landing)
                .toList();
        for (List<Landing> told : List.of(whole, live)) {
            assertThat(told).hasSize(3);
            for (int k = 0; k < 3; k++) {
                Landing landing = told.get(k);
                assertThat(landing.flags()).containsAnyOf(LandingFlag.NO_QUIET_START, LandingFlag.NOT_SETTLED);
                Measures m = Objects.requireNonNull(landing.measures());
                double sigma = Objects.requireNonNull(m.sigma().impactSpeedMS());
                double error =
                        Math.abs(Objects.requireNonNull(m.fall().impactSpeedMS()) - BodyMotion.GRAVITY * 0.5 / 2);
                assertThat(error).isLessThan(k == 1 ? 2 * sigma : SPEED_MS);
                assertThat(sigma).isLessThan(k == 1 ? 1.6 : SPEED_MS);
            }
        }
    }

    /** Jumps of half a second in a row. */
    enum Jumps {
        A_STRIDE_BETWEEN,
        BOUNDING,
        ON_THE_SPOT
    }

    private static void act(MotionScript script, Jumps jumps) {
        switch (jumps) {
            case A_STRIDE_BETWEEN -> script.bounces(3, 0.24, 0.1, 0.12, 0.12, 0.5, 0.12, 0.5, 0.12, 0.5);
            case BOUNDING -> script.bounces(3, 0.24, 0.1, 0.12, 0.12, 0.5, 0.5, 0.5);
            case ON_THE_SPOT -> script.bounces(0, 0.24, 0.5, 0.5, 0.5);
        }
    }

    /** Short ones are steps, and told as such although they are few. */
    @Test
    void threeHops_areSteps() {
        Recording recording = record(script -> script.bounces(0, 0.24, 0.3, 0.3, 0.3));
        assertThat(all(recording)).singleElement().satisfies(steps -> {
            assertThat(steps.kind()).isEqualTo(EventKind.STEPS);
            assertThat(steps.count()).isEqualTo(3);
        });
    }

    /** Squats tip the body as bends do, but less and with the knees: the routine's bends after them are taken. */
    @Test
    void squatsBeforeTheRoutine_areNoBends() {
        RecordingAnalysis analysis = afterSquats(2);
        assertThat(analysis.mounting().values())
                .allSatisfy(mounting -> assertThat(mounting.method()).isEqualTo(MountingMethod.BEND));
        assertThat(lean(analysis).change()).isCloseTo(8, within(0.4));
    }

    /** Nor is what people do while they wait: the mounting is that of the routine's bends. */
    @Test
    void sittingLacingAndPickingUpBeforeTheRoutine_areNoBends() {
        RecordingAnalysis analysis = after(
                script -> script.stand(4)
                        .sitOnChair(3)
                        .stand(2)
                        .laceShoe(Side.LEFT)
                        .stand(2)
                        .pickUpBox(0.15, 20)
                        .stand(4),
                2);
        assertThat(analysis.mounting().values())
                .allSatisfy(mounting -> assertThat(mounting.method()).isEqualTo(MountingMethod.BEND));
        assertThat(lean(analysis).change()).isCloseTo(8, within(0.4));
    }

    /** Quick bends shake the upper back as a hinge would: they are bends, and lean is as right as with slow ones. */
    @ParameterizedTest
    @ValueSource(doubles = {0.8, 1.2})
    void quickBends_areTaken(double bendS) {
        RecordingAnalysis analysis = afterSquats(bendS);
        assertThat(analysis.findings()).extracting(Finding::code).doesNotContain(FindingCode.NO_OPENING_ROUTINE);
        assertThat(analysis.mounting().values())
                .allSatisfy(mounting -> assertThat(mounting.method()).isEqualTo(MountingMethod.BEND));
        assertThat(lean(analysis).change()).isCloseTo(8, within(0.4));
    }

    private static RecordingAnalysis afterSquats(double bendS) {
        return after(script -> script.stand(4).squat(0.4).stand(1).squat(0.4).stand(4), bendS);
    }

    private static RecordingAnalysis after(Consumer<MotionScript> waiting, double bendS) {
        BendPlan bend = new BendPlan(42, 32, 0, 0, bendS, 0.1);
        SyntheticSession session = SessionScript.idealSensors(17)
                .act(waiting)
                .act(script -> script.bend(bend).stand(1.2).bend(bend).stand(2))
                .drop(LandingPlan.fromHeight(0.5).with(LandingQuantity.TRUNK_LEAN, 8))
                .stand(3)
                .record();
        RecordingAnalysis analysis =
                new RecordingAnalyser(FilterKind.TWO_PASS).analyse(SyntheticStreams.recording(session), Progress.NONE);
        check(analysis.landings(), session);
        return analysis;
    }

    private static SyntheticSession session(Consumer<MotionScript> actions) {
        return SessionScript.idealSensors(17)
                .openingRoutine()
                .act(actions)
                .stand(3)
                .record();
    }

    private static Recording record(Consumer<MotionScript> actions) {
        return SyntheticStreams.recording(session(actions));
    }

    private static List<Landing> all(Recording recording) {
        return new RecordingAnalyser(FilterKind.TWO_PASS)
                .analyse(recording, Progress.NONE)
                .landings();
    }

    private static List<Landing> landings(Recording recording) {
        return all(recording).stream()
                .filter(found -> found.kind() == EventKind.LANDING)
                .toList();
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
            if (m.fall().flightS() != null) {
                double sigma = Objects.requireNonNull(m.sigma().flightS());
                assertThat(m.fall().flightS()).isCloseTo(truth.contactS() - truth.takeoffS(), within(3 * sigma));
            }
            assertThat(m.impact().peakG()).isCloseTo(truth.peakG(), within(0.02 * truth.peakG()));
            assertThat(Objects.requireNonNull(m.braking().depthM())).isCloseTo(truth.depthM(), within(DEPTH_M));
            angles(landings.get(k), SyntheticTruth.angles(truth));
            if (truth.stepsAfter() > 0 || m.balance().overFeet() != null) {
                assertThat(m.balance().stepsAfter()).isEqualTo(truth.stepsAfter());
            } else {
                assertThat(landings.get(k).flags()).containsAnyOf(LandingFlag.FEET_MOVED, LandingFlag.NOT_SETTLED);
            }
            if (truth.stepsAfter() > 0) {
                assertThat(m.balance().overFeet()).isNull();
                assertThat(landings.get(k).flags()).contains(LandingFlag.FEET_MOVED);
            }
        }
    }

    private static void angles(Landing landing, Map<BodyAngle, TrueLanding.Angle> truth) {
        Posture posture = Objects.requireNonNull(landing.measures()).posture();
        boolean fromStance = !landing.flags().contains(LandingFlag.NO_QUIET_START);
        angle(posture.trunkFlexion(), truth, BodyAngle.TRUNK_FLEXION, true);
        angle(posture.trunkLean(), truth, BodyAngle.TRUNK_LEAN, true);
        angle(posture.pelvicTilt(), truth, BodyAngle.PELVIC_TILT, true);
        angle(posture.pelvicObliquity(), truth, BodyAngle.PELVIC_OBLIQUITY, true);
        angle(posture.pelvicRotation(), truth, BodyAngle.PELVIC_ROTATION, fromStance);
        angle(posture.twist(), truth, BodyAngle.TWIST, fromStance);
    }

    private static void angle(
            @Nullable Excursion found, Map<BodyAngle, TrueLanding.Angle> truth, BodyAngle which, boolean fromStance) {
        Excursion angle = Objects.requireNonNull(found);
        TrueLanding.Angle really = Objects.requireNonNull(truth.get(which));
        double bound = Math.max(3 * angle.sigma(), ANGLE_DEG);
        if (fromStance) {
            assertThat(angle.contact()).as("%s at contact", which).isCloseTo(really.contact(), within(bound));
        }
        assertThat(angle.change()).as("change of %s", which).isCloseTo(really.change(angle.change()), within(bound));
    }
}
