package evenfall.fusion.orientation;

import evenfall.ingest.recording.SensorStream;

/** Runs a filter over a whole stream. */
public final class OrientationEstimator {

    /** The rate taken for a stream that has none: a single sample, or time that never moves. */
    private static final double FALLBACK_RATE = 100;

    private OrientationEstimator() {}

    /** World from sensor at each sample of {@code stream}, by the filter {@code kind}. */
    public static OrientationTrack estimate(SensorStream stream, FilterKind kind) {
        double rateHz = stream.rateHz() > 0 ? stream.rateHz() : FALLBACK_RATE;
        if (kind == FilterKind.TWO_PASS) {
            return TwoPassEstimator.estimate(stream, rateHz);
        }
        return causal(stream, kind, rateHz);
    }

    /** The same by a filter that does not look ahead, told another rate than the stream's own. */
    static OrientationTrack causal(SensorStream stream, FilterKind kind, double rateHz) {
        StreamingEstimator estimator = new StreamingEstimator(kind, rateHz);
        OrientationFilter filter = estimator.filter();
        OrientationTrack.Builder track = new OrientationTrack.Builder(stream.size());
        for (int i = 0; i < stream.size(); i++) {
            estimator.add(stream, i);
            track.add(filter.w(), filter.x(), filter.y(), filter.z());
        }
        return track.build();
    }
}
