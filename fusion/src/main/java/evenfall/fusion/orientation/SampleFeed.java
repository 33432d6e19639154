package evenfall.fusion.orientation;

import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SampleCursor;
import evenfall.ingest.recording.SensorStream;

/**
 * Makes of each stamped sample the turn that a filter is to take: over which time, at which rate, and how far it may be
 * off. What clipped is made up for by {@link ClippedTurn}.
 *
 * <p>Over missing time of up to {@value #BRIDGED} s the rate is taken to run on a straight line from the last sample
 * before to the first after; longer gaps turn nothing. Either way the filter is told a doubt.
 */
final class SampleFeed {

    /** Longest missing time that is bridged, s: a turn of the body takes longer. */
    private static final double BRIDGED = 0.25;

    /** Time over which a turn changes so much that a straight line between its ends tells nothing, s. */
    private static final double FORGETTING = 0.4;

    /** How fast a body may have turned in a long gap though it was quiet at both ends, rad/s. */
    private static final double UNSEEN_RATE = 0.2;

    /** An axis of a clipped sample stands at full scale if it is this near to the largest of the three. */
    private static final double NEAR_LARGEST = 0.97;

    private final SampleClock clock;
    private final boolean ahead;
    private final ClippedTurn[] clipped = {new ClippedTurn(), new ClippedTurn(), new ClippedTurn()};
    private double lastX;
    private double lastY;
    private double lastZ;
    private double gapDoubt;

    /** Time the turn takes, s. */
    double seconds;

    /** Turn rate, rad/s. */
    double gx;

    double gy;
    double gz;

    /**
     * A feed of samples in order of time.
     *
     * @param ahead whether it may look ahead in the stream
     */
    SampleFeed(double rateHz, boolean ahead) {
        this.clock = new SampleClock(1 / rateHz);
        this.ahead = ahead;
    }

    /** Takes sample {@code i} of a stream, at which the cursor is. */
    void next(SensorStream stream, int i, SampleCursor sample) {
        boolean clips = stream.turnRateClipped(i);
        if (ahead && clips) {
            for (int axis = 0; axis < 3; axis++) {
                if (!clipped[axis].clips() && atFullScale(stream, i, axis)) {
                    plan(stream, i, axis);
                }
            }
        }
        next(sample.time(), sample.rate(0), sample.rate(1), sample.rate(2), clips);
    }

    private void plan(SensorStream stream, int from, int axis) {
        int to = from;
        double before = stream.time(Math.max(0, from - 1));
        while (to < stream.size() && atFullScale(stream, to, axis)) {
            to++;
        }
        if (to + 1 < stream.size() && stream.time(to) - before <= ClippedTurn.LONGEST) {
            double fall = Math.signum(rate(stream, from, axis)) * (rate(stream, to, axis) - rate(stream, to + 1, axis));
            double interval = stream.time(to + 1) - stream.time(to);
            if (interval > 0) {
                clipped[axis].plan(fall / interval, stream.time(to) - before);
            }
        }
    }

    private static boolean atFullScale(SensorStream stream, int i, int axis) {
        return stream.turnRateClipped(i)
                && atFullScale(rate(stream, i, axis), stream.gx(i), stream.gy(i), stream.gz(i));
    }

    private static boolean atFullScale(double rate, double x, double y, double z) {
        return Math.abs(rate) >= NEAR_LARGEST * Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z)));
    }

    private static double rate(SensorStream stream, int i, int axis) {
        return axis == 0 ? stream.gx(i) : axis == 1 ? stream.gy(i) : stream.gz(i);
    }

    void next(double stamp, double x, double y, double z, boolean clips) {
        seconds = clock.next(stamp);
        gx = x;
        gy = y;
        gz = z;
        gapDoubt = 0;
        clipped[0].next(x, clips && atFullScale(x, x, y, z), seconds);
        clipped[1].next(y, clips && atFullScale(y, x, y, z), seconds);
        clipped[2].next(z, clips && atFullScale(z, x, y, z), seconds);
        double missing = clock.missing();
        if (missing > 0) {
            bridge(missing);
        }
        lastX = x;
        lastY = y;
        lastZ = z;
    }

    private void bridge(double missing) {
        double mean = (Vector3.length(lastX, lastY, lastZ) + Vector3.length(gx, gy, gz)) / 2;
        if (missing <= BRIDGED) {
            double part = missing / 2 / (seconds + missing);
            gx += part * (lastX - gx);
            gy += part * (lastY - gy);
            gz += part * (lastZ - gz);
            seconds += missing;
            gapDoubt = mean * missing * missing / FORGETTING;
        } else {
            gapDoubt = (mean + UNSEEN_RATE) * missing;
        }
    }

    /** Steps a filter by the sample last taken, with its specific force, m/s². */
    void into(OrientationFilter filter, double ax, double ay, double az) {
        double missing = clock.missing();
        if (missing > 0) {
            filter.gap(missing, gapDoubt);
        }
        double x = clipped[0].doubt;
        double y = clipped[1].doubt;
        double z = clipped[2].doubt;
        if (x > 0 || y > 0 || z > 0) {
            filter.doubt(x, y, z);
        }
        if (filter.makesUpForClipping() && seconds > 0) {
            filter.step(
                    seconds,
                    ax,
                    ay,
                    az,
                    gx + clipped[0].added / seconds,
                    gy + clipped[1].added / seconds,
                    gz + clipped[2].added / seconds);
        } else {
            filter.step(seconds, ax, ay, az, gx, gy, gz);
        }
    }
}
