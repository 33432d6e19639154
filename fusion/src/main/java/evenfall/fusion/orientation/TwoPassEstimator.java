package evenfall.fusion.orientation;

import evenfall.ingest.recording.SampleCursor;
import evenfall.ingest.recording.SensorStream;

/** Runs a {@link MotionFilter} over a stream and then back over its {@link BlockHistory}. */
final class TwoPassEstimator {

    private TwoPassEstimator() {}

    static OrientationTrack estimate(SensorStream stream, double rateHz) {
        OrientationTrack.Builder rows = new OrientationTrack.Builder(stream.size());
        BlockHistory history = new BlockHistory(rows);
        MotionFilter filter = new MotionFilter(MotionParams.STANDARD, rateHz, history);
        SampleFeed feed = new SampleFeed(rateHz, true);
        SampleCursor sample = stream.cursor();
        for (int i = 0; i < stream.size(); i++) {
            sample.goTo(i);
            feed.next(stream, i, sample);
            if (stream.accelerationClipped(i)) {
                filter.forceClips();
            }
            feed.into(filter, sample.force(0), sample.force(1), sample.force(2));
            if (filter.isStarting()) {
                // the history lays on the tilt once the start is over
                Attitude turned = filter.turned();
                rows.add(turned.w, turned.x, turned.y, turned.z);
            } else {
                rows.add(filter.w(), filter.x(), filter.y(), filter.z());
            }
        }
        filter.finish();
        history.finish();
        return rows.build();
    }
}
