package evenfall.report.round;

import evenfall.fusion.analysis.Level;
import evenfall.ingest.recording.SensorStream;
import org.jspecify.annotations.Nullable;

/** Follows one sensor from look to look. Not safe for use from several threads. */
final class SensorWatch {

    /** Who has not spoken for so long is silent, s; less than after what it is said. */
    private static final double SILENT_S = 1.5;

    /** Still for so long is at rest, s, */
    private static final double REST_S = 0.5;

    /** turning slower than this, rad/s: common practice, no source. */
    private static final double REST_RAD_S = 0.2;

    private int samples;
    private double lastS = Double.NEGATIVE_INFINITY;

    SensorGlance look(double nowS, int count, @Nullable SensorStream stream, @Nullable Level level) {
        if (count > samples) {
            samples = count;
            lastS = nowS;
        }
        boolean speaks = nowS - lastS < SILENT_S;
        return stream == null
                ? new SensorGlance(count > 0, speaks, 0, false, level)
                : new SensorGlance(count > 0, speaks, stream.rateHz(), speaks && atRest(stream), level);
    }

    private static boolean atRest(SensorStream stream) {
        int last = stream.size() - 1;
        double from = stream.time(last) - REST_S;
        for (int i = last; i >= 0 && stream.time(i) >= from; i--) {
            double square = stream.gx(i) * stream.gx(i) + stream.gy(i) * stream.gy(i) + stream.gz(i) * stream.gz(i);
            if (square > REST_RAD_S * REST_RAD_S) {
                return false;
            }
        }
        return stream.durationS() >= REST_S;
    }
}
