package evenfall.fusion.analysis;

import evenfall.fixtures.sensor.SensorSignals;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Recordings of synthetic sessions, whole or as far as they have come. */
final class Sessions {

    private Sessions() {}

    /** What a sensor recorded from one moment to another of its own clock, s. */
    static SensorRecording recorded(SensorSignals s, double fromS, double toS) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < s.size(); i++) {
            if (s.time()[i] >= fromS && s.time()[i] <= toS) {
                builder.add(
                        s.time()[i],
                        s.acceleration(0)[i],
                        s.acceleration(1)[i],
                        s.acceleration(2)[i],
                        s.turnRate(0)[i],
                        s.turnRate(1)[i],
                        s.turnRate(2)[i]);
            }
        }
        return new SensorRecording("invented", builder.soFar(), null, List.of());
    }

    static SensorRecording recorded(SensorSignals s) {
        return recorded(s, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    static RecordingAnalysis analyse(SensorRecording pelvis, @Nullable SensorRecording upperBack) {
        return new RecordingAnalyser(FilterKind.TWO_PASS).analyse(new Recording(pelvis, upperBack), Progress.NONE);
    }
}
