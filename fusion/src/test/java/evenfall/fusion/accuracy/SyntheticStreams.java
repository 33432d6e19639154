package evenfall.fusion.accuracy;

import evenfall.fixtures.sensor.SensorSignals;
import evenfall.fixtures.session.SyntheticSession;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.util.List;

/** What the synthesiser's sensors recorded, as the program takes it. */
final class SyntheticStreams {

    private SyntheticStreams() {}

    /** Both sensors of a session, their clipped samples not looked for. */
    static Recording recording(SyntheticSession session) {
        return new Recording(recording("pelvis", session.pelvis()), recording("upper back", session.upperBack()));
    }

    private static SensorRecording recording(String name, SensorSignals signals) {
        return new SensorRecording(name, builder(signals).build(), null, List.of());
    }

    /** All samples of a sensor. */
    static SensorStream.Builder builder(SensorSignals s) {
        SensorStream.Builder builder = new SensorStream.Builder();
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < s.size(); i++) {
            // Jitter may turn two stamps round; a table of such rows would be read in this order too.
            before = Math.max(before, s.time()[i]);
            builder.add(
                    before,
                    s.acceleration(0)[i],
                    s.acceleration(1)[i],
                    s.acceleration(2)[i],
                    s.turnRate(0)[i],
                    s.turnRate(1)[i],
                    s.turnRate(2)[i]);
        }
        return builder;
    }
}
