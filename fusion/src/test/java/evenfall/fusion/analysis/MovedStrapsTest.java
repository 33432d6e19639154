package evenfall.fusion.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.motion.LandingQuantity;
import evenfall.fixtures.sensor.Mount;
import evenfall.fixtures.sensor.SensorModel;
import evenfall.fixtures.sensor.Slip;
import evenfall.fixtures.sensor.Triple;
import evenfall.fixtures.session.SessionScript;
import evenfall.fixtures.session.SyntheticSession;
import evenfall.fixtures.truth.BodyAngle;
import evenfall.fixtures.truth.LandingTruth;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Posture;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.place.Place;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Straps that slip on synthetic bodies: what is told is right, and what is not known is not told. */
class MovedStrapsTest {

    private static final double SLIPPED_DEG = 8;
    private static final int SLIPPED_IN = 3;

    private static SessionScript script() {
        return SessionScript.idealSensors(11);
    }

    private static void drops(SessionScript script, int times) {
        for (int k = 0; k < times; k++) {
            script.drop(LandingPlan.fromHeight(0.5)
                            .with(LandingQuantity.PELVIC_OBLIQUITY, -5)
                            .with(LandingQuantity.TRUNK_LEAN, 6))
                    .stand(3);
        }
    }

    private static SensorModel slipping(double atS, Triple axis, double degrees) {
        return SensorModel.ideal(200).withMount(Mount.aligned().withSlip(new Slip(atS, axis, degrees)));
    }

    private static SyntheticSession slippingAfterContact(double afterS, Place place) {
        SessionScript whole = script().openingRoutine();
        drops(whole, 8);
        double contact = whole.record().truth().get(SLIPPED_IN).contactS();
        SessionScript again = script().openingRoutine();
        drops(again, 8);
        SensorModel slips = slipping(contact + afterS, new Triple(0, 1, 0), SLIPPED_DEG);
        return (place == Place.PELVIS ? again.pelvisSensor(slips) : again.upperBackSensor(slips)).record();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 1.0})
    void anglesOfTheLandingInWhichThePelvissStrapSlips_areMissing_andAllOthersRight(double afterS) {
        SyntheticSession session = slippingAfterContact(afterS, Place.PELVIS);
        List<Landing> landings = Sessions.analyse(
                        Sessions.recorded(session.pelvis()), Sessions.recorded(session.upperBack()))
                .landings();

        for (int k = 0; k < landings.size(); k++) {
            Posture posture = posture(landings.get(k));
            LandingTruth truth = session.truth().get(k);
            assertThat(landings.get(k).flags().contains(LandingFlag.STRAP_MOVED))
                    .isEqualTo(k == SLIPPED_IN);
            isTold(posture.trunkLean(), truth, BodyAngle.TRUNK_LEAN);
            if (k == SLIPPED_IN) {
                assertThat(posture.pelvicTilt()).isNull();
                assertThat(posture.twist()).isNull();
            } else {
                isTold(posture.pelvicTilt(), truth, BodyAngle.PELVIC_TILT);
                isTold(posture.pelvicObliquity(), truth, BodyAngle.PELVIC_OBLIQUITY);
            }
        }
    }

    @Test
    void theUpperBacksStrap_takesNothingFromThePelvis() {
        SyntheticSession session = slippingAfterContact(1, Place.UPPER_BACK);
        Landing landing = Sessions.analyse(Sessions.recorded(session.pelvis()), Sessions.recorded(session.upperBack()))
                .landings()
                .get(SLIPPED_IN);

        assertThat(landing.flags()).contains(LandingFlag.STRAP_MOVED);
        assertThat(posture(landing).trunkFlexion()).isNull();
        isTold(posture(landing).pelvicTilt(), session.truth().get(SLIPPED_IN), BodyAngle.PELVIC_TILT);
    }

    /** Without bends the longest stance tells what is upright, but not for what came before the strap moved. */
    @Test
    void withoutBends_whatIsUprightIsToldBeforeTheMove() {
        SessionScript script = script().stand(1.5);
        drops(script, 3);
        double slip = script.now() + 0.3;
        for (int k = 0; k < 3; k++) {
            script.drop(LandingPlan.fromHeight(0.5)).stand(6);
        }
        SyntheticSession session =
                script.pelvisSensor(slipping(slip, new Triple(0, 1, 0), 10)).record();
        double from = session.truth().get(0).contactS() - 1.3;
        RecordingAnalysis analysis =
                Sessions.analyse(Sessions.recorded(session.pelvis(), from, Double.POSITIVE_INFINITY), null);

        assertThat(analysis.landings()).hasSize(6);
        for (Landing landing : analysis.landings()) {
            Excursion tilt = Objects.requireNonNull(posture(landing).pelvicTilt());
            assertThat(tilt.contact()).isCloseTo(6, within(0.5));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {90, 180})
    void whoJumpsAside_facesWhereTheBendsSay_andIsTold(double degrees) {
        SessionScript script = script().openingRoutine();
        double at = script.now();
        drops(script, 6);
        SensorModel turned = slipping(at - 0.6, new Triple(0, 0, 1), degrees);
        SyntheticSession session =
                script.pelvisSensor(turned).upperBackSensor(turned).record();
        RecordingAnalysis analysis =
                Sessions.analyse(Sessions.recorded(session.pelvis()), Sessions.recorded(session.upperBack()));

        assertThat(Objects.requireNonNull(analysis.mounting().get(Place.PELVIS)).sigmaDeg())
                .isLessThan(1);
        assertThat(analysis.findings())
                .filteredOn(finding -> finding.code() == FindingCode.NO_OPENING_ROUTINE)
                .extracting(Finding::message)
                .anySatisfy(message -> assertThat(message).contains("aside"));
    }

    private static Posture posture(Landing landing) {
        return Objects.requireNonNull(landing.measures()).posture();
    }

    private static void isTold(@Nullable Excursion told, LandingTruth truth, BodyAngle angle) {
        assertThat(Objects.requireNonNull(told).change())
                .isCloseTo(truth.angle(angle).change(), within(0.2));
    }
}
