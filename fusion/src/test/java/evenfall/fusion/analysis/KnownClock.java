package evenfall.fusion.analysis;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.event.EventFinder;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import java.util.ArrayList;

/** The analysis for one who knows how the sensors' clocks run, so that it can be seen what not knowing costs. */
public final class KnownClock {

    private KnownClock() {}

    /** As {@link RecordingAnalyser#analyse(Recording, Progress)} with {@code clock} for the one it would find. */
    public static RecordingAnalysis analyse(Recording recording, ClockMap clock) {
        SensorReading pelvis = SensorReading.of(recording.pelvis());
        OrientationTrack pelvisTrack = pelvis.orientation(FilterKind.TWO_PASS);
        SensorRecording worn = recording.upperBack();
        SensorReading upperBack = worn == null ? null : SensorReading.of(worn);
        OrientationTrack track = upperBack == null ? null : upperBack.orientation(FilterKind.TWO_PASS);
        return new LandingAnalysis(
                        new RecordingAnalyser.Sensors(pelvis, pelvisTrack, upperBack, track, clock),
                        new EventFinder().all(pelvis.stream(), pelvisTrack),
                        new ArrayList<>())
                .run(Progress.NONE);
    }
}
