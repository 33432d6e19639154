package evenfall.fusion.analysis;

import evenfall.fusion.posture.Covariance;
import evenfall.fusion.rotation.SensorAxes;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gap;
import evenfall.ingest.recording.SensorStream;

/**
 * How far the integrals of force and turn rate over missing samples may be off, told by how both behave beside the gap. Both
 * are taken to run on a straight line from its one end to the other, in the sensor's axes: what a turn over the gap moves from one
 * of them to another counts as a change as well, which is on the safe side.
 */
final class GapDoubt {

    /** A force that begins and ends within a gap, and so shows at neither end, m/s². */
    private static final double LEAST_FORCE = 0.3;
    /** This part of the difference between the forces at both ends may be missed. */
    private static final double FORCE_SHARE = 0.3;
    /** This part of the parabola through both ends that has the slopes seen there may be missed. */
    private static final double FORCE_SLOPE_SHARE = 1.5;

    /** This part of the difference between the rates at both ends may be missed. */
    private static final double RATE_SHARE = 0.2;
    /** This part of the parabola through both ends that has the slopes seen there may be missed. */
    private static final double SLOPE_SHARE = 1.5;
    /** Slopes are taken over so long, s. */
    private static final double SLOPE_S = 0.015;
    /** Nobody keeps stiller than this, rad/s. */
    private static final double LEAST_RATE = Math.toRadians(1);

    /** A turn that begins within a gap, rad/s. */
    private static final double BEGUN_RATE = Math.toRadians(8);

    /** What is missed along the change seen at both ends is missed across it to this part. */
    private static final double ASIDE = 0.4;

    private final SensorStream stream;

    GapDoubt(SensorStream stream) {
        this.stream = stream;
    }

    /** How far the change of speed over a gap may be off, m/s, sensor axes. */
    Covariance speed(Gap gap) {
        return straightLineMisses(gap, 0, FORCE_SHARE, FORCE_SLOPE_SHARE, LEAST_FORCE);
    }

    /** How far the turn over a gap may be off, rad, sensor axes. */
    Covariance turn(Gap gap) {
        return straightLineMisses(gap, 3, RATE_SHARE, SLOPE_SHARE, LEAST_RATE);
    }

    /**
     * One standard deviation of the tilt that begins within a gap, and so shows at neither end, about each horizontal axis, rad: the
     * stances on both sides tell what it was.
     */
    double begunTilt(Gap gap) {
        return BEGUN_RATE * gap.lengthS();
    }

    /**
     * How far the integral over a gap may be off a straight line across it.
     *
     * @param column of the first axis
     * @param risePart of the difference between both ends
     * @param bendPart of the mean height of the parabola that has the slopes seen at both ends
     * @param least what may be missed along every axis besides
     */
    private Covariance straightLineMisses(Gap gap, int column, double risePart, double bendPart, double least) {
        int before = gap.before();
        int after = before + 1;
        int steps = Math.max(2, (int) Math.round(SLOPE_S * stream.rateHz()));
        int first = Math.max(0, before - steps);
        int last = Math.min(stream.size() - 1, after + steps);
        double lengthS = gap.lengthS();
        Vector3 rise = value(after, column).minus(value(before, column));
        Vector3 bend = slope(after, last, column).minus(slope(first, before, column));
        double sides = ASIDE * Math.hypot(risePart * rise.norm(), bendPart * bend.norm() * lengthS / 12);
        return Covariance.even(Math.hypot(least, sides) * lengthS)
                .plus(rise.times(risePart * lengthS))
                .plus(bend.times(bendPart * lengthS * lengthS / 12));
    }

    private Vector3 slope(int from, int to, int column) {
        double dt = stream.time(to) - stream.time(from);
        return dt > 0 ? value(to, column).minus(value(from, column)).times(1 / dt) : Vector3.ZERO;
    }

    private Vector3 value(int i, int column) {
        return column == 0 ? SensorAxes.force(stream, i) : SensorAxes.turnRate(stream, i);
    }
}
