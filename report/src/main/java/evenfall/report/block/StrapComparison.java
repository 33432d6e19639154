package evenfall.report.block;

import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.alignment.MountingMethod;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.place.Place;
import evenfall.report.log.SessionDate;
import evenfall.report.statistics.Medians;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Which sensors sat elsewhere: how a sensor is turned on its segment in the quiet stance, session against session. The way
 * it sits is taken out of the angles, but a strap that is turned has most often moved along the back too, and skin gives
 * otherwise there. The session least far from all others is what is usual.
 */
public final class StrapComparison {

    /** With fewer sessions nobody knows which of them is usual. */
    private static final int SESSIONS = 3;

    /** A strap put on again by the same hands is turned by some degrees: common practice, no source. */
    private static final double LEAST_DEG = 10;

    private static final double SPREADS = 3;

    private StrapComparison() {}

    /** The sensors that sat elsewhere, for the sessions that have any. */
    public static Map<SessionDate, List<StrapPlace>> of(Map<SessionDate, Map<Place, Mounting>> mountings) {
        Map<SessionDate, List<StrapPlace>> elsewhere = new TreeMap<>();
        for (Place place : Place.values()) {
            List<SessionDate> dates = new ArrayList<>();
            List<Mounting> worn = new ArrayList<>();
            new TreeMap<>(mountings).forEach((date, mounting) -> {
                Mounting one = mounting.get(place);
                // Axes that the layout states were not looked for: nothing is known of how the sensor sat.
                if (one != null && one.method() != MountingMethod.AXES) {
                    dates.add(date);
                    worn.add(one);
                }
            });
            if (worn.size() >= SESSIONS) {
                compare(place, dates, worn, elsewhere);
            }
        }
        return elsewhere;
    }

    private static void compare(
            Place place, List<SessionDate> dates, List<Mounting> worn, Map<SessionDate, List<StrapPlace>> elsewhere) {
        Mounting middle = Objects.requireNonNull(middle(worn));
        double[] off = worn.stream().mapToDouble(one -> offDeg(one, middle)).toArray();
        double usual = Medians.of(off);
        for (int s = 0; s < off.length; s++) {
            double error = headed(worn.get(s), middle) ? Math.hypot(worn.get(s).sigmaDeg(), middle.sigmaDeg()) : 0;
            if (off[s] > Math.max(LEAST_DEG, SPREADS * Math.max(error, usual))) {
                elsewhere
                        .computeIfAbsent(dates.get(s), date -> new ArrayList<>())
                        .add(new StrapPlace(place, off[s], usual));
            }
        }
    }

    private static Mounting middle(List<Mounting> worn) {
        Mounting middle = worn.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (Mounting candidate : worn) {
            double sum =
                    worn.stream().mapToDouble(one -> offDeg(one, candidate)).sum();
            if (sum < least) {
                least = sum;
                middle = candidate;
            }
        }
        return middle;
    }

    private static boolean headed(Mounting one, Mounting other) {
        return one.method() != MountingMethod.GRAVITY_ONLY && other.method() != MountingMethod.GRAVITY_ONLY;
    }

    /** The turn between two ways a sensor sits; where gravity is all that is known, only its tilt. */
    private static double offDeg(Mounting one, Mounting other) {
        return Math.toDegrees(
                headed(one, other)
                        ? one.segmentFromSensor().angleTo(other.segmentFromSensor())
                        : one.segmentFromSensor()
                                .rotateBack(Vector3.UP)
                                .angleTo(other.segmentFromSensor().rotateBack(Vector3.UP)));
    }
}
