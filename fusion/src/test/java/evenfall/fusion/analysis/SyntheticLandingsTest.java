package evenfall.fusion.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fixtures.motion.BodyMotion;
import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.motion.LandingQuantity;
import evenfall.fixtures.sensor.SensorSignals;
import evenfall.fixtures.session.SessionScript;
import evenfall.fixtures.session.SyntheticSession;
import evenfall.fixtures.truth.AngleTruth;
import evenfall.fixtures.truth.BodyAngle;
import evenfall.fixtures.truth.LandingTruth;
import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.MountingMethod;
import evenfall.fusion.landing.Estimate;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Impact;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.BodyAxes;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.recording.SignedAxis;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The whole analysis on closed-form sessions of the synthesiser, whose truth it does not share a line of code with. */
class SyntheticLandingsTest {

    private static final SyntheticSession IDEAL = session(SessionScript.idealSensors(11));

    private static final RecordingAnalysis PLAIN = analyse(recording(IDEAL, UnaryOperator.identity(), null));

    private static SyntheticSession session(SessionScript script) {
        return script.openingRoutine()
                .drop(LandingPlan.fromHeight(0.5)
                        .with(LandingQuantity.TRUNK_LEAN, 8)
                        .with(LandingQuantity.PELVIC_ROTATION, 7)
                        .with(LandingQuantity.LATERAL_AT_LOWEST, 0.04))
                .stand(3)
                .drop(LandingPlan.fromHeight(0.8)
                        .with(LandingQuantity.TWIST, -6)
                        .with(LandingQuantity.PELVIC_OBLIQUITY, -5)
                        .with(LandingQuantity.SPINE_FLEXION, 16))
                .stand(3)
                .record();
    }

    /** One sample of a sensor, turned or mirrored before it is recorded. */
    private record Sample(Vector3 force, Vector3 rate) {}

    private static Recording recording(
            SyntheticSession session, UnaryOperator<Sample> change, @Nullable BodyAxes axes) {
        return new Recording(
                new SensorRecording("pelvis", stream(session.pelvis(), change), axes, List.of()),
                new SensorRecording("upper back", stream(session.upperBack(), change), axes, List.of()));
    }

    private static SensorStream stream(SensorSignals s, UnaryOperator<Sample> change) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < s.size(); i++) {
            Sample c = change.apply(new Sample(
                    new Vector3(s.acceleration(0)[i], s.acceleration(1)[i], s.acceleration(2)[i]),
                    new Vector3(s.turnRate(0)[i], s.turnRate(1)[i], s.turnRate(2)[i])));
            Vector3 f = c.force();
            Vector3 w = c.rate();
            builder.add(s.time()[i], f.x(), f.y(), f.z(), w.x(), w.y(), w.z());
        }
        return builder.build();
    }

    private static RecordingAnalysis analyse(Recording recording) {
        return new RecordingAnalyser(FilterKind.TWO_PASS).analyse(recording, Progress.NONE);
    }

    private static Measures measures(RecordingAnalysis analysis, int k) {
        return Objects.requireNonNull(analysis.landings().get(k).measures());
    }

    private static Excursion angle(Landing landing, Function<Posture, @Nullable Excursion> which) {
        return Objects.requireNonNull(
                which.apply(Objects.requireNonNull(landing.measures()).posture()));
    }

    @Test
    void idealSensors_giveTheTruthOfEveryLanding() {
        assertThat(PLAIN.landings()).hasSize(IDEAL.truth().size());
        double clockStart = IDEAL.pelvis().time()[0];
        for (int k = 0; k < IDEAL.truth().size(); k++) {
            LandingTruth truth = IDEAL.truth().get(k);
            Landing landing = PLAIN.landings().get(k);
            Measures m = measures(PLAIN, k);
            // Contact is found in the rise of the force, which this body lets begin more gently than simulated feet do.
            assertThat(landing.moments().contactS()).isCloseTo(truth.contactS() - clockStart, within(0.008));
            assertThat(landing.moments().peakS()).isCloseTo(truth.peakS() - clockStart, within(0.005));
            // What contact comes late is missing from depth, at up to 4 m/s.
            assertThat(m.fall().impactSpeedMS()).isCloseTo(truth.impactSpeedMS(), within(0.06));
            assertThat(m.fall().dropHeightM()).isCloseTo(truth.dropHeightM(), within(0.03));
            assertThat(m.braking().depthM()).isCloseTo(truth.depthM(), within(0.025));
            assertThat(m.impact().peakG()).isCloseTo(truth.peakG(), within(0.02 * truth.peakG()));
            assertThat(Objects.requireNonNull(m.balance().lateralShift()).value())
                    .isCloseTo(truth.lateralShiftM(), within(0.01));
            assertThat(m.balance().stepsAfter()).isZero();
        }
    }

    @Test
    void idealSensors_giveTheTrueAngles() {
        for (int k = 0; k < IDEAL.truth().size(); k++) {
            LandingTruth truth = IDEAL.truth().get(k);
            Landing landing = PLAIN.landings().get(k);
            close(angle(landing, Posture::trunkFlexion), truth.angle(BodyAngle.TRUNK_FLEXION), 0.7);
            close(angle(landing, Posture::trunkLean), truth.angle(BodyAngle.TRUNK_LEAN), 0.4);
            close(angle(landing, Posture::pelvicRotation), truth.angle(BodyAngle.PELVIC_ROTATION), 0.5);
            close(angle(landing, Posture::pelvicTilt), truth.angle(BodyAngle.PELVIC_TILT), 0.7);
            close(angle(landing, Posture::pelvicObliquity), truth.angle(BodyAngle.PELVIC_OBLIQUITY), 0.3);
            close(angle(landing, Posture::twist), truth.angle(BodyAngle.TWIST), 1.0);
            close(angle(landing, Posture::spineFlexion), truth.angle(BodyAngle.SPINE_FLEXION), 0.8);
        }
    }

    /** The heels strike where the force, light on the way down, comes back to weight before the blow. */
    @Test
    void heelDrops_standWhereTheHeelsStrike() {
        SensorSignals pelvis = IDEAL.pelvis();
        double clockStart = pelvis.time()[0];
        assertThat(PLAIN.heelDropsS()).hasSize(2).isSorted().allSatisfy(at -> {
            assertThat(at).isLessThan(IDEAL.truth().get(0).contactS() - clockStart);
            int blow = 0;
            for (int i = 0; i < pelvis.size(); i++) {
                boolean near = Math.abs(pelvis.time()[i] - clockStart - at) < 0.2;
                blow = near && (blow == 0 || force(pelvis, i) > force(pelvis, blow)) ? i : blow;
            }
            int strike = blow;
            while (force(pelvis, strike) > BodyMotion.GRAVITY) {
                strike--;
            }
            // One picture of a film of sixty a second.
            assertThat(at).isCloseTo(pelvis.time()[strike] - clockStart, within(0.017));
        });
    }

    private static double force(SensorSignals s, int i) {
        return Math.hypot(Math.hypot(s.acceleration(0)[i], s.acceleration(1)[i]), s.acceleration(2)[i]);
    }

    private static void close(Excursion measured, AngleTruth truth, double degrees) {
        assertThat(measured.contact()).isCloseTo(truth.contact(), within(degrees));
        // A change of less than a degree is sway, and may be as far to the one side as to the other.
        boolean sway = Math.abs(truth.change()) < 1;
        assertThat(sway ? Math.abs(measured.change()) : measured.change())
                .isCloseTo(sway ? Math.abs(truth.change()) : truth.change(), within(degrees));
    }

    @Test
    void clocks_areTiedByTheirSharedMotion() {
        ClockMap clock = Objects.requireNonNull(PLAIN.clock());
        // Both ideal clocks read the same; the allowance for the spine's delay is taken off a spine without delay.
        assertThat(clock.offsetS()).isCloseTo(0.0, within(0.004));
        assertThat(clock.driftPpm()).isCloseTo(0.0, within(50.0));
    }

    @Test
    void turningTheSensors_changesNothing() {
        long seed = 5;
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 2; round++) {
            Vector3 axis = new Vector3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1));
            Quaternion turn = Quaternion.about(axis, random.nextDouble(0.5, 3));
            RecordingAnalysis turned =
                    analyse(recording(IDEAL, s -> new Sample(turn.rotate(s.force()), turn.rotate(s.rate())), null));
            assertThat(turned.landings()).as("seed %d", seed).hasSameSizeAs(PLAIN.landings());
            for (int k = 0; k < turned.landings().size(); k++) {
                same(turned.landings().get(k), PLAIN.landings().get(k), 1);
            }
        }
    }

    @Test
    void mirroringLeftAndRight_turnsTheSignsOfSides() {
        RecordingAnalysis mirrored = analyse(recording(
                IDEAL,
                s -> new Sample(
                        new Vector3(s.force().x(), -s.force().y(), s.force().z()),
                        new Vector3(-s.rate().x(), s.rate().y(), -s.rate().z())),
                null));
        assertThat(mirrored.landings()).hasSameSizeAs(PLAIN.landings());
        for (int k = 0; k < mirrored.landings().size(); k++) {
            same(mirrored.landings().get(k), PLAIN.landings().get(k), -1);
        }
    }

    /** Single precision of the samples is the only difference: a hundredth of a degree, a millimetre. */
    private static void same(Landing a, Landing b, int side) {
        for (Function<Posture, @Nullable Excursion> which : List.<Function<Posture, @Nullable Excursion>>of(
                Posture::trunkLean, Posture::pelvicRotation, Posture::pelvicObliquity, Posture::twist)) {
            assertThat(angle(a, which).contact())
                    .isCloseTo(side * angle(b, which).contact(), within(0.02));
            assertThat(angle(a, which).change())
                    .isCloseTo(side * angle(b, which).change(), within(0.02));
        }
        assertThat(angle(a, Posture::pelvicTilt).change())
                .isCloseTo(angle(b, Posture::pelvicTilt).change(), within(0.02));
        assertThat(a.moments().contactS()).isCloseTo(b.moments().contactS(), within(0.0005));
        Measures m = Objects.requireNonNull(a.measures());
        Measures n = Objects.requireNonNull(b.measures());
        assertThat(m.braking().depthM()).isCloseTo(n.braking().depthM(), within(0.001));
        assertThat(Objects.requireNonNull(m.balance().lateralShift()).value())
                .isCloseTo(
                        side
                                * Objects.requireNonNull(n.balance().lateralShift())
                                        .value(),
                        within(0.001));
    }

    @Test
    void mirroredGyroscope_isToldAndPutRight() {
        RecordingAnalysis wrong =
                analyse(recording(IDEAL, s -> new Sample(s.force(), s.rate().times(-1)), null));

        assertThat(wrong.findings())
                .filteredOn(finding -> finding.code() == FindingCode.GYRO_SENSE)
                .extracting(Finding::sensor)
                .containsExactly(Place.PELVIS, Place.UPPER_BACK);
        for (int k = 0; k < wrong.landings().size(); k++) {
            same(wrong.landings().get(k), PLAIN.landings().get(k), 1);
        }
    }

    @Test
    void aPeakCutOffAtFullScale_isEstimatedNearerThanItIsRecorded() {
        double limit = 0.85
                * PLAIN.landings().stream()
                        .mapToDouble(landing -> Objects.requireNonNull(landing.measures())
                                .impact()
                                .peakG())
                        .min()
                        .orElseThrow();
        RecordingAnalysis cut = analyse(new Recording(
                new SensorRecording("pelvis", cutOff(IDEAL.pelvis(), limit * 9.80665), null, List.of()), null));
        int estimates = 0;
        for (int k = 0; k < cut.landings().size(); k++) {
            Impact recorded = measures(cut, k).impact();
            double truth = measures(PLAIN, k).impact().peakG();
            assertThat(recorded.clipped()).isTrue();
            Estimate estimated = recorded.peakEstimatedG();
            if (estimated != null) {
                estimates++;
                assertThat(Math.abs(estimated.value() - truth))
                        .isLessThan(3 * estimated.sigma())
                        .isLessThan(truth - recorded.peakG());
                // "At least" is off by no less than the estimate says.
                assertThat(measures(cut, k).sigma().peakG()).isGreaterThan(estimated.value() - recorded.peakG());
            }
        }
        // Harder landings stand at full scale for longer than can be made up for.
        assertThat(estimates).isPositive();
    }

    private static SensorStream cutOff(SensorSignals s, double limit) {
        SensorStream whole = stream(s, UnaryOperator.identity());
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < whole.size(); i++) {
            double[] f = {whole.ax(i), whole.ay(i), whole.az(i)};
            boolean clipped = false;
            for (int axis = 0; axis < 3; axis++) {
                clipped |= Math.abs(f[axis]) >= limit;
                f[axis] = Math.max(-limit, Math.min(limit, f[axis]));
            }
            builder.add(s.time()[i], f[0], f[1], f[2], whole.gx(i), whole.gy(i), whole.gz(i));
            if (clipped) {
                builder.clipAcceleration(i);
            }
        }
        return builder.build();
    }

    @Test
    void aGapAtContact_isToldAndErrsNoMoreThanItSays() {
        double contact = IDEAL.truth().get(0).contactS();
        RecordingAnalysis hidden = analyse(new Recording(
                new SensorRecording("pelvis", without(IDEAL.pelvis(), contact - 0.03, contact + 0.03), null, List.of()),
                null));
        LandingTruth truth = IDEAL.truth().get(0);
        Landing landing = hidden.landings().get(0);
        Measures m = measures(hidden, 0);
        assertThat(landing.flags()).contains(LandingFlag.GAP);
        double clockStart = IDEAL.pelvis().time()[0];
        // Less sure than a contact that was seen, surer than the gap alone would leave it (even over 60 ms).
        assertThat(m.sigma().contactS()).isBetween(0.004, 0.06 / Math.sqrt(12));
        assertThat(landing.moments().contactS())
                .isCloseTo(truth.contactS() - clockStart, within(2 * m.sigma().contactS()));
        double depth = Objects.requireNonNull(m.braking().depthM());
        assertThat(Math.abs(depth - truth.depthM()))
                .isLessThan(2 * Objects.requireNonNull(m.sigma().depthM()));
    }

    @Test
    void aGapOverThePeak_errsNoMoreThanItSays() {
        double peak = PLAIN.landings().get(0).moments().peakS() + IDEAL.pelvis().time()[0];
        RecordingAnalysis hidden = analyse(new Recording(
                new SensorRecording("pelvis", without(IDEAL.pelvis(), peak - 0.03, peak + 0.03), null, List.of()),
                null));
        double missed = measures(PLAIN, 0).impact().peakG()
                - measures(hidden, 0).impact().peakG();
        assertThat(missed).isGreaterThan(5 * measures(PLAIN, 0).sigma().peakG());
        assertThat(missed).isLessThan(2 * measures(hidden, 0).sigma().peakG());
    }

    private static SensorStream without(SensorSignals s, double fromS, double toS) {
        SensorStream whole = stream(s, UnaryOperator.identity());
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < whole.size(); i++) {
            if (s.time()[i] < fromS || s.time()[i] > toS) {
                builder.add(s.time()[i], whole.ax(i), whole.ay(i), whole.az(i), whole.gx(i), whole.gy(i), whole.gz(i));
            }
        }
        return builder.build();
    }

    @Test
    void aStrapThatMovesWhileStanding_leavesTheLandingBeforeItAlone() {
        // Half a second after the first landing has settled; the sensor tells nothing of the turn itself.
        LandingTruth truth = IDEAL.truth().get(0);
        double at = Objects.requireNonNull(truth.settledS()) + 0.9;
        Quaternion slip = Quaternion.about(new Vector3(1, 0, 0), Math.toRadians(8));
        SensorStream whole = stream(IDEAL.pelvis(), UnaryOperator.identity());
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < whole.size(); i++) {
            Quaternion turn = IDEAL.pelvis().time()[i] > at ? slip : Quaternion.IDENTITY;
            Vector3 f = turn.rotate(new Vector3(whole.ax(i), whole.ay(i), whole.az(i)));
            Vector3 w = turn.rotate(new Vector3(whole.gx(i), whole.gy(i), whole.gz(i)));
            builder.add(IDEAL.pelvis().time()[i], f.x(), f.y(), f.z(), w.x(), w.y(), w.z());
        }
        Measures m = measures(
                analyse(new Recording(new SensorRecording("pelvis", builder.build(), null, List.of()), null)), 0);
        assertThat(Objects.requireNonNull(m.balance().lateralShift()).value())
                .isCloseTo(truth.lateralShiftM(), within(0.01));
        assertThat(m.fall().impactSpeedMS()).isCloseTo(truth.impactSpeedMS(), within(0.06));
    }

    @Test
    void oneMirroredAxisOfThePelvis_isToldAndPutRight() {
        RecordingAnalysis wrong = analyse(recording(
                IDEAL,
                s -> new Sample(
                        s.force(),
                        new Vector3(s.rate().x(), -s.rate().y(), s.rate().z())),
                null));

        assertThat(wrong.findings())
                .filteredOn(finding -> finding.code() == FindingCode.GYRO_SENSE)
                .filteredOn(finding -> finding.sensor() == Place.PELVIS)
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("about y;"));
        assertThat(wrong.landings()).hasSameSizeAs(PLAIN.landings());
        for (int k = 0; k < wrong.landings().size(); k++) {
            assertThat(angle(wrong.landings().get(k), Posture::pelvicTilt).change())
                    .isCloseTo(
                            angle(PLAIN.landings().get(k), Posture::pelvicTilt).change(), within(0.02));
            assertThat(angle(wrong.landings().get(k), Posture::pelvicRotation).change())
                    .isCloseTo(
                            angle(PLAIN.landings().get(k), Posture::pelvicRotation)
                                    .change(),
                            within(0.02));
        }
    }

    @Test
    void statedAxes_areTakenAgainstGravity() {
        RecordingAnalysis stated =
                analyse(recording(IDEAL, UnaryOperator.identity(), new BodyAxes(SignedAxis.PLUS_X, SignedAxis.PLUS_Z)));

        assertThat(Objects.requireNonNull(stated.mounting().get(Place.PELVIS)).method())
                .isEqualTo(MountingMethod.AXES);
        assertThat(stated.landings())
                .allSatisfy(landing -> assertThat(landing.flags()).contains(LandingFlag.AGAINST_GRAVITY));
    }

    @Test
    void sensorUpsideDown_isTold() {
        Recording recording =
                recording(IDEAL, UnaryOperator.identity(), new BodyAxes(SignedAxis.PLUS_X, SignedAxis.MINUS_Z));

        assertThat(BodyChecks.find(recording)).extracting(Finding::code).contains(FindingCode.UPSIDE_DOWN);
    }

    @Test
    void swappedSensors_areTold() {
        Recording right = recording(IDEAL, UnaryOperator.identity(), null);
        Recording swapped = new Recording(Objects.requireNonNull(right.upperBack()), right.pelvis());

        assertThat(BodyChecks.find(right)).isEmpty();
        assertThat(BodyChecks.find(swapped)).extracting(Finding::code).contains(FindingCode.SENSORS_SWAPPED);
    }

    @Test
    void withoutUpperBack_trunkIsMissingAndFlagged() {
        Recording alone =
                new Recording(recording(IDEAL, UnaryOperator.identity(), null).pelvis(), null);

        RecordingAnalysis analysis = analyse(alone);

        assertThat(analysis.clock()).isNull();
        for (Landing landing : analysis.landings()) {
            Posture posture = Objects.requireNonNull(landing.measures()).posture();
            assertThat(posture.trunkFlexion()).isNull();
            assertThat(posture.twist()).isNull();
            assertThat(posture.pelvicRotation()).isNotNull();
            assertThat(landing.flags()).contains(LandingFlag.NO_UPPER_BACK);
        }
    }
}
