package evenfall.fusion.orientation;

import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.recording.SensorStream;

/**
 * Runs a causal filter over samples as they come. {@link OrientationEstimator} runs whole streams through this, so that
 * live and stored agree to the last bit.
 */
public final class StreamingEstimator {

    private final OrientationFilter filter;
    private final SampleFeed feed;

    /**
     * An estimator at its start.
     *
     * @param kind any filter that does not look ahead
     * @param rateHz samples a second, above 0
     */
    public StreamingEstimator(FilterKind kind, double rateHz) {
        if (!(rateHz > 0 && rateHz < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a rate must be above 0, not " + rateHz + " Hz");
        }
        this.feed = new SampleFeed(rateHz, false);
        this.filter = switch (kind) {
            case LIVE -> new MotionFilter(MotionParams.STANDARD, rateHz, LookLog.NONE);
            case MADGWICK -> new MadgwickFilter(MadgwickFilter.DEFAULT_BETA);
            case COMPLEMENTARY -> new ComplementaryFilter(ComplementaryFilter.DEFAULT_TIME_CONSTANT);
            case TWO_PASS -> throw new IllegalArgumentException("two-pass looks ahead and cannot follow live");
        };
    }

    /**
     * Takes the next sample.
     *
     * @param stamp the sensor's clock, s, not before the last one's
     * @param ax specific force, sensor axes, m/s², and so on
     * @param gx turn rate, sensor axes, rad/s, and so on
     * @param turnRateClipped whether a gyroscope axis stood at full scale
     */
    public void add(
            double stamp, double ax, double ay, double az, double gx, double gy, double gz, boolean turnRateClipped) {
        feed.next(stamp, gx, gy, gz, turnRateClipped);
        feed.into(filter, ax, ay, az);
    }

    /** Takes sample {@code i} of a stream. */
    void add(SensorStream stream, int i) {
        if (stream.accelerationClipped(i)) {
            filter.forceClips();
        }
        add(
                stream.time(i),
                stream.ax(i),
                stream.ay(i),
                stream.az(i),
                stream.gx(i),
                stream.gy(i),
                stream.gz(i),
                stream.turnRateClipped(i));
    }

    /** World from sensor after the last sample. */
    public Quaternion orientation() {
        return new Quaternion(filter.w(), filter.x(), filter.y(), filter.z());
    }

    OrientationFilter filter() {
        return filter;
    }
}
