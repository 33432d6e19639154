package evenfall.fusion.analysis;

import evenfall.fusion.alignment.PrincipalAxis;
import evenfall.fusion.alignment.Stance;
import evenfall.fusion.landing.TakeoffFinder;
import evenfall.fusion.posture.Motion;
import evenfall.fusion.rotation.SensorAxes;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which way each take-off tells that forward is, as a direction across the vertical in sensor axes: people go where they
 * face, and the trunk crouches straight ahead before it.
 */
final class TakeoffHeadings {

    /** Slower than this at take-off tells no direction, m/s. */
    private static final double LEAST_TRAVEL = 0.25;
    /** Speed at take-off is averaged over so long before and after it, s. */
    private static final double ABOUT_TAKEOFF_S = 0.025;
    /** Longer before contact than any flight's end, shorter than crouch and flight, s. */
    private static final double BEFORE_FLIGHT_S = 0.6;

    private static final double LEAST_CROUCH_S = 0.2;
    private static final double LEAST_CROUCH_RATE = Math.toRadians(20);
    private static final double LEAST_CROUCH_SHARE = 0.9;

    private final SensorStream stream;
    private final List<Takeoff> takeoffs;

    /**
     * What one landing tells.
     *
     * @param contactS when it touched the ground, s on the sensor's clock; negative infinity before the sensor came
     * @param before the stance before take-off, or null
     * @param travel where it went at take-off, level, sensor axes of the stance; null where that was too slow or nobody
     *     stood still before
     */
    record Takeoff(
            double contactS,
            @Nullable Stance before,
            @Nullable Vector3 travel) {

        /** Of a landing that was over before the sensor came. */
        static final Takeoff MISSED = new Takeoff(Double.NEGATIVE_INFINITY, null, null);

        /** Of landing {@code k} of a sensor's motion. */
        static Takeoff of(SensorMotion motion, int k, double contactS) {
            Stance before = motion.cut(k).before();
            return new Takeoff(
                    contactS,
                    before,
                    before == null ? null : direction(motion.motion(k).motion(), contactS));
        }
    }

    /** The headings of the landings of a sensor. */
    TakeoffHeadings(SensorStream stream, List<Takeoff> takeoffs) {
        this.stream = stream;
        this.takeoffs = List.copyOf(takeoffs);
    }

    /** Number of landings. */
    int size() {
        return takeoffs.size();
    }

    /** When landing {@code k} touched the ground, s on the sensor's clock. */
    double contactS(int k) {
        return takeoffs.get(k).contactS();
    }

    /** Where landing {@code k} went at take-off, or null where that was too slow or nobody stood still before. */
    @Nullable Vector3 travel(int k, Vector3 up) {
        Vector3 level = takeoffs.get(k).travel();
        return level == null ? null : level.across(up.normalised());
    }

    private static @Nullable Vector3 direction(Motion m, double contactS) {
        Double takeoff = TakeoffFinder.find(m, contactS);
        if (takeoff == null) {
            return null;
        }
        // A trunk still faces where it goes then; in flight it leans and turns.
        int from = m.indexAt(takeoff - ABOUT_TAKEOFF_S);
        int to = m.indexAt(takeoff + ABOUT_TAKEOFF_S);
        Vector3 sum = Vector3.ZERO;
        for (int i = from; i <= to; i++) {
            sum = sum.plus(m.speed(i));
        }
        Vector3 level = new Vector3(sum.x(), sum.y(), 0).times(1.0 / (to - from + 1));
        return level.norm() > LEAST_TRAVEL ? m.orientation(0).rotateBack(level.normalised()) : null;
    }

    /**
     * How the trunk bends forward and up again before take-off {@code k}, or null where it does so too little or about
     * more than one axis.
     *
     * @param left about the left in sensor axes, which tells the axis found by its sense
     */
    @Nullable Vector3 crouch(int k, Vector3 up, Vector3 left) {
        Stance before = takeoffs.get(k).before();
        double end = takeoffs.get(k).contactS() - BEFORE_FLIGHT_S;
        if (before == null || end - before.endS() < LEAST_CROUCH_S) {
            return null;
        }
        PrincipalAxis axis = new PrincipalAxis();
        axis.addSense(left.x(), left.y(), left.z());
        double turning = 0;
        for (int i = before.to(); i < stream.size() && stream.time(i) < end; i++) {
            Vector3 rate = SensorAxes.turnRate(stream, i).minus(before.rate()).across(up.normalised());
            axis.add(rate.x(), rate.y(), rate.z(), 1);
            turning = Math.max(turning, rate.norm());
        }
        if (turning <= LEAST_CROUCH_RATE) {
            return null;
        }
        PrincipalAxis.Axis found = axis.solve();
        return found.share() > LEAST_CROUCH_SHARE ? found.direction().cross(up.normalised()) : null;
    }
}
