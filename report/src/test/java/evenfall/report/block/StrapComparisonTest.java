package evenfall.report.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.alignment.MountingMethod;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.place.Place;
import evenfall.report.log.SessionDate;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class StrapComparisonTest {

    private static final Vector3 AXIS = new Vector3(0.48, 0.6, 0.64);

    private final Map<SessionDate, Map<Place, Mounting>> mountings = new TreeMap<>();

    @Test
    void sensorTurnedFartherThanUsual_isMarked_andTheOthersAreNot() {
        double[] turned = {0, 3, -2, 4, 25, 1};
        for (int day = 1; day <= turned.length; day++) {
            wear(day, MountingMethod.BEND, turned[day - 1], 1);
        }
        Map<SessionDate, List<StrapPlace>> elsewhere = StrapComparison.of(mountings);

        assertThat(elsewhere.keySet()).extracting(SessionDate::toString).containsExactly("2026-03-05");
        // By count, the sensor at 3 degrees is the one least far from all others.
        StrapPlace strap = elsewhere.values().iterator().next().get(0);
        assertThat(strap.place()).isEqualTo(Place.PELVIS);
        assertThat(strap.offDeg()).isCloseTo(22, within(1e-9));
    }

    @Test
    void turnWithinItsOwnUncertainty_isNotMarked() {
        for (int day = 1; day <= 5; day++) {
            wear(day, MountingMethod.BEND, day == 5 ? 25 : day, day == 5 ? 12 : 1);
        }
        assertThat(StrapComparison.of(mountings)).isEmpty();
    }

    /** Where the heading is a guess, a turn about the vertical is none that is known of. */
    @Test
    void whereOnlyGravityIsKnown_onlyTheTiltCounts() {
        for (int day = 1; day <= 5; day++) {
            mountings.put(
                    date(day),
                    Map.of(
                            Place.PELVIS,
                            new Mounting(
                                    Quaternion.about(Vector3.UP, day == 5 ? 1.5 : 0),
                                    MountingMethod.GRAVITY_ONLY,
                                    60)));
        }
        assertThat(StrapComparison.of(mountings)).isEmpty();
        mountings.put(
                date(5),
                Map.of(Place.PELVIS, new Mounting(Quaternion.about(Vector3.X, 0.5), MountingMethod.GRAVITY_ONLY, 60)));
        assertThat(StrapComparison.of(mountings)).hasSize(1);
    }

    @Test
    void twoSessions_doNotTellWhichIsUsual() {
        wear(1, MountingMethod.BEND, 0, 1);
        wear(2, MountingMethod.BEND, 40, 1);

        assertThat(StrapComparison.of(mountings)).isEmpty();
    }

    private void wear(int day, MountingMethod method, double turnedDeg, double sigmaDeg) {
        mountings.put(
                date(day),
                Map.of(
                        Place.PELVIS,
                        new Mounting(Quaternion.about(AXIS, Math.toRadians(turnedDeg)), method, sigmaDeg)));
    }

    private static SessionDate date(int day) {
        return new SessionDate(LocalDate.of(2026, 3, day), 0);
    }
}
