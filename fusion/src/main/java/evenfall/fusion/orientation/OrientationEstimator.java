package evenfall.fusion.orientation;

import evenfall.ingest.recording.SensorStream;

/** Runs a filter over a whole stream. */
public final class OrientationEstimator {

    private OrientationEstimator() {}

    /** World from sensor at each sample of {@code stream}, by the filter {@code kind}. */
    public static OrientationTrack estimate(SensorStream stream, FilterKind kind) {
        return switch (kind) {
            case TWO_PASS, LIVE, COMPLEMENTARY ->
                run(stream, new ComplementaryFilter(ComplementaryFilter.DEFAULT_TIME_CONSTANT));
            case MADGWICK -> run(stream, new MadgwickFilter(MadgwickFilter.DEFAULT_BETA));
        };
    }

    private static OrientationTrack run(SensorStream stream, OrientationFilter filter) {
        float[] wxyz = new float[4 * stream.size()];
        double usual = stream.rateHz() > 0 ? 1 / stream.rateHz() : 0;
        for (int i = 0; i < stream.size(); i++) {
            double seconds = i == 0 ? usual : stream.time(i) - stream.time(i - 1);
            filter.step(
                    Math.min(seconds, SensorStream.GAP_INTERVALS * usual),
                    stream.ax(i),
                    stream.ay(i),
                    stream.az(i),
                    stream.gx(i),
                    stream.gy(i),
                    stream.gz(i));
            wxyz[4 * i] = (float) filter.w();
            wxyz[4 * i + 1] = (float) filter.x();
            wxyz[4 * i + 2] = (float) filter.y();
            wxyz[4 * i + 3] = (float) filter.z();
        }
        return new OrientationTrack(wxyz);
    }
}
