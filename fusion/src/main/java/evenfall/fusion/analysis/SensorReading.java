package evenfall.fusion.analysis;

import evenfall.fusion.alignment.GyroSense;
import evenfall.fusion.alignment.OpeningRoutine;
import evenfall.fusion.alignment.RoutineFinder;
import evenfall.fusion.alignment.Stance;
import evenfall.fusion.alignment.StillnessFinder;
import evenfall.fusion.alignment.StrapWatch;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.orientation.OrientationEstimator;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.util.List;

/**
 * One sensor's stream as everything after reads it: the gyroscope's sense put right, with its quiet stretches.
 *
 * @param recording what was recorded
 * @param stream the samples, gyroscope put right
 * @param stances the quiet stretches
 * @param sense about which axes the gyroscope had to be put right
 * @param moves moves of the strap
 * @param routines remembers which bends were seen, however often the opening routine is asked for
 */
record SensorReading(
        SensorRecording recording,
        SensorStream stream,
        List<Stance> stances,
        GyroSense sense,
        List<StrapWatch.Move> moves,
        RoutineFinder routines) {

    static SensorReading of(SensorRecording recording) {
        SensorStream raw = recording.stream();
        List<Stance> stances = StillnessFinder.find(raw);
        GyroSense sense = GyroSense.find(raw, bias(stances));
        if (sense.mirrored()) {
            SensorStream right = raw.withTurnRateReversed(sense.x(), sense.y(), sense.z());
            List<Stance> again = StillnessFinder.find(right);
            return new SensorReading(recording, right, again, sense, StrapWatch.find(again), new RoutineFinder());
        }
        return new SensorReading(recording, raw, stances, sense, StrapWatch.find(stances), new RoutineFinder());
    }

    /** Mean turn rate of the quiet stretches by their length, rad/s; zero without any. */
    static Vector3 bias(List<Stance> stances) {
        Vector3 sum = Vector3.ZERO;
        double length = 0;
        for (Stance stance : stances) {
            sum = sum.plus(stance.rate().times(stance.lengthS()));
            length += stance.lengthS();
        }
        return length > 0 ? sum.times(1 / length) : sum;
    }

    /**
     * The opening routine. Not safe for use from several threads at once.
     *
     * @param beforeS where to stop looking, s on the sensor's clock
     */
    OpeningRoutine opening(double beforeS) {
        return routines.find(stream, stances, beforeS);
    }

    OrientationTrack orientation(FilterKind filter) {
        return OrientationEstimator.estimate(stream, filter);
    }
}
