package evenfall.fusion.analysis;

import evenfall.ingest.recording.Gap;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;

/**
 * How far the integrals of force and turn rate over missing samples may be off, told by how both behave beside the gap. Both
 * are taken to run on a straight line from its one end to the other.
 */
final class GapDoubt {

    /** A force that begins and ends within a gap, and so shows at neither end, m/s². */
    private static final double LEAST_FORCE = 0.3;
    /** This part of the difference between the forces at both ends may be missed. */
    private static final double FORCE_SHARE = 0.3;
    /** This part of the parabola through both ends that has the slopes seen there may be missed. */
    private static final double FORCE_SLOPE_SHARE = 1.5;
    /** This part of how far the force about the gap strays from 1 g may be missed. */
    private static final double STRAY_SHARE = 0.03;
    /** How far about a gap that is looked for, s: an impact's rise fits in. */
    private static final double FORCE_WITHIN_S = 0.1;

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
        double missed = straightLineMisses(gap, 0, FORCE_SHARE, FORCE_SLOPE_SHARE);
        return Math.hypot(Math.hypot(LEAST_FORCE, STRAY_SHARE * most), missed) * gap.lengthS();
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
        return Math.hypot(LEAST_RATE, straightLineMisses(gap, 3, RATE_SHARE, SLOPE_SHARE)) * gap.lengthS();
    }

    /**
     * How far the mean over a gap may be off a straight line across it, along each axis.
     *
     * @param column of the first axis
     * @param risePart of the difference between both ends
     * @param bendPart of the mean height of the parabola that has the slopes seen at both ends
     */
    private double straightLineMisses(Gap gap, int column, double risePart, double bendPart) {
        int before = gap.before();
        int after = before + 1;
        int steps = Math.max(2, (int) Math.round(SLOPE_S * stream.rateHz()));
        int first = Math.max(0, before - steps);
        int last = Math.min(stream.size() - 1, after + steps);
        double squares = 0;
        for (int axis = column; axis < column + 3; axis++) {
            double rise = value(after, axis) - value(before, axis);
            double bend = slope(after, last, axis) - slope(first, before, axis);
            squares += square(risePart * rise) + square(bendPart * bend * gap.lengthS() / 12);
        }
        return Math.sqrt(squares / 3);
    }

    private double slope(int from, int to, int column) {
        double dt = stream.time(to) - stream.time(from);
        return dt > 0 ? (value(to, column) - value(from, column)) / dt : 0;
    }

    private double value(int i, int column) {
        return switch (column) {
            case 0 -> stream.ax(i);
            case 1 -> stream.ay(i);
            case 2 -> stream.az(i);
            case 3 -> stream.gx(i);
            case 4 -> stream.gy(i);
            default -> stream.gz(i);
        };
    }

    private int index(double timeS) {
        return Math.max(0, Math.min(stream.size() - 1, stream.indexAtOrBefore(timeS)));
    }

    private static double square(double value) {
        return value * value;
    }
}
