package evenfall.fusion.orientation;

import evenfall.ingest.recording.SensorStream;

/**
 * Follows a stream that grows, one step of a causal filter a sample: what was told once is never worked out again. The
 * orientations are those that {@link OrientationEstimator} gives the whole stream at the same rate, to the last bit.
 */
public final class OrientationFollower {

    private final StreamingEstimator estimator;
    private final OrientationFilter filter;
    private final OrientationTrack.Tail track;

    /**
     * A follower at the start of a stream.
     *
     * @param kind any filter that does not look ahead
     * @param rateHz samples a second, above 0
     * @param keptS how far back orientations are kept, s
     */
    public OrientationFollower(FilterKind kind, double rateHz, double keptS) {
        this.estimator = new StreamingEstimator(kind, rateHz);
        this.filter = estimator.filter();
        this.track = new OrientationTrack.Tail((int) Math.ceil(keptS * rateHz));
    }

    /**
     * Takes the samples of {@code stream} that were not taken yet; it begins with those that were.
     *
     * @param to where to stop, exclusive
     */
    public void follow(SensorStream stream, int to) {
        for (int i = track.size(); i < to; i++) {
            estimator.add(stream, i);
            track.add(filter.w(), filter.x(), filter.y(), filter.z());
        }
    }

    /** The orientations so far. */
    public OrientationTrack track() {
        return track.track();
    }
}
