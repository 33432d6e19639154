package evenfall.fusion.orientation;

import evenfall.ingest.recording.SensorStream;

/**
 * Makes of each stamped sample the turn that a filter is to take: over which time, at which rate, and how far it may be
 * off.
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

    /** Share of a clipped turn rate that the true one is taken to exceed it by, for want of knowledge. */
    private static final double CLIPPED_SHARE = 0.3;

    private final SampleClock clock;
    private final int sense;
    private double lastX;
    private double lastY;
    private double lastZ;

    /** Time the turn takes, s. */
    double seconds;

    /** Turn rate, rad/s. */
    double gx;

    double gy;
    double gz;

    /** How far the turn may be off, rad. */
    double doubt;

    private SampleFeed(double rateHz, int sense) {
        this.clock = new SampleClock(1 / rateHz);
        this.sense = sense;
    }

    /** For samples in order of time. */
    static SampleFeed forward(double rateHz) {
        return new SampleFeed(rateHz, 1);
    }

    /** For samples from the last to the first: time and turn both run back. */
    static SampleFeed backward(double rateHz) {
        return new SampleFeed(rateHz, -1);
    }

    /** Takes sample {@code i} of a stream. */
    void next(SensorStream stream, int i) {
        next(
                sense * stream.time(i),
                sense * stream.gx(i),
                sense * stream.gy(i),
                sense * stream.gz(i),
                stream.turnRateClipped(i));
    }

    void next(double stamp, double x, double y, double z, boolean clipped) {
        seconds = clock.next(stamp);
        gx = x;
        gy = y;
        gz = z;
        double speed = Math.sqrt(x * x + y * y + z * z);
        doubt = clipped ? CLIPPED_SHARE * speed * seconds : 0;
        double missing = clock.missing();
        if (missing > 0) {
            double before = Math.sqrt(lastX * lastX + lastY * lastY + lastZ * lastZ);
            double mean = (before + speed) / 2;
            if (missing <= BRIDGED) {
                double part = missing / 2 / (seconds + missing);
                gx += part * (lastX - x);
                gy += part * (lastY - y);
                gz += part * (lastZ - z);
                seconds += missing;
                doubt += mean * missing * missing / FORGETTING;
            } else {
                doubt += (mean + UNSEEN_RATE) * missing;
            }
        }
        lastX = x;
        lastY = y;
        lastZ = z;
    }
}
