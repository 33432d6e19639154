package evenfall.fusion.orientation;

import evenfall.ingest.recording.SensorStream;

/** Runs a {@link MotionFilter} over a stream and then back over its {@link BlockHistory}. */
final class TwoPassEstimator {

    private TwoPassEstimator() {}

    static OrientationTrack estimate(SensorStream stream, double rateHz) {
        OrientationTrack.Builder rows = new OrientationTrack.Builder(stream.size());
        BlockHistory history = new BlockHistory(rows);
        MotionFilter filter = new MotionFilter(MotionParams.standard(), rateHz, history);
        SampleFeed feed = new SampleFeed(rateHz, true);
        for (int i = 0; i < stream.size(); i++) {
            feed.next(stream, i);
            if (stream.accelerationClipped(i)) {
                filter.forceClips();
            }
            feed.into(filter, stream.ax(i), stream.ay(i), stream.az(i));
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
