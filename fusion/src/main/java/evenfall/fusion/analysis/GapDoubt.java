package evenfall.fusion.analysis;

import evenfall.ingest.recording.Gap;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;

/**
 * How far the integrals of force and turn rate over missing samples may be off, told by how both behave beside the gap. Both
 * are taken to run on a straight line from its one end to the other.
 */
final class GapDoubt {

    /** Speed of somebody who does little, m/s for each second of gap. */
    private static final double LEAST_FORCE = 0.6;
    /** A straight line across a gap misses this share of how far the force about it strays from 1 g. */
    private static final double FORCE_SHARE = 0.3;
    /** How far about a gap that is looked for, s: an impact's rise fits in. */
    private static final double FORCE_WITHIN_S = 0.1;

    /** Of the difference between the rates at both ends so much may be missed, */
    private static final double RATE_SHARE = 0.2;
    /** and of the parabola through both ends that has the slopes seen there so much. */
    private static final double SLOPE_SHARE = 1.5;
    /** Slopes are taken over so long, s. */
    private static final double SLOPE_S = 0.015;
    /** Nobody keeps stiller than this, rad/s. */
    private static final double LEAST_RATE = Math.toRadians(1);

    /** A turn that begins within a gap, rad/s. */
    private static final double BEGUN_RATE = Math.toRadians(30);

    private final SensorStream stream;

    GapDoubt(SensorStream stream) {
        this.stream = stream;
    }

    /** One standard deviation of the change of speed over a gap, along each axis, m/s. */
    double speedSigma(Gap gap) {
        double most = 0;
        for (int i = index(gap.startS() - FORCE_WITHIN_S);
                i < stream.size() && stream.time(i) < gap.endS() + FORCE_WITHIN_S;
                i++) {
            double size =
                    Math.sqrt(stream.ax(i) * stream.ax(i) + stream.ay(i) * stream.ay(i) + stream.az(i) * stream.az(i));
            most = Math.max(most, Math.abs(size - Gravity.STANDARD));
        }
        return Math.max(LEAST_FORCE, FORCE_SHARE * most) * gap.lengthS();
    }

    /**
     * One standard deviation of the tilt over a gap about each axis, rad: more, for the stances on both sides tell what it was,
     * and a turn that begins within the gap shows at neither end.
     */
    double tiltSigma(Gap gap) {
        return Math.hypot(turnSigma(gap), BEGUN_RATE * gap.lengthS());
    }

    /** One standard deviation of the turn over a gap, about each axis, rad. */
    double turnSigma(Gap gap) {
        int before = gap.before();
        int after = before + 1;
        int steps = Math.max(2, (int) Math.round(SLOPE_S * stream.rateHz()));
        int first = Math.max(0, before - steps);
        int last = Math.min(stream.size() - 1, after + steps);
        double length = gap.lengthS();
        double squares = 0;
        for (int axis = 0; axis < 3; axis++) {
            double rise = rate(after, axis) - rate(before, axis);
            double bend = slope(after, last, axis) - slope(first, before, axis);
            squares += square(RATE_SHARE * rise) + square(SLOPE_SHARE * bend * length / 12);
        }
        return Math.hypot(LEAST_RATE, Math.sqrt(squares / 3)) * length;
    }

    private double slope(int from, int to, int axis) {
        double dt = stream.time(to) - stream.time(from);
        return dt > 0 ? (rate(to, axis) - rate(from, axis)) / dt : 0;
    }

    private double rate(int i, int axis) {
        return axis == 0 ? stream.gx(i) : axis == 1 ? stream.gy(i) : stream.gz(i);
    }

    private int index(double timeS) {
        return Math.max(0, Math.min(stream.size() - 1, stream.indexAtOrBefore(timeS)));
    }

    private static double square(double value) {
        return value * value;
    }
}
