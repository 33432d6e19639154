package evenfall.ingest.wire;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Collects the samples of both sensors as they come from the wire into a recording. Not safe for use from several
 * threads.
 *
 * <p>A sample whose time lies before that of the one before it is left out. When a sensor's clock jumps back by more
 * than {@value #RESTART_S} s the sensor has started anew: its time goes on from where it was, and a finding says so.
 */
public final class WireStreams implements SampleReceiver {

    private static final double RESTART_S = 1;

    private final Map<Place, Sensor> sensors = new EnumMap<>(Place.class);

    @Override
    public void sample(Place place, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
        Sensor sensor = sensors.get(place);
        if (sensor == null) {
            sensor = new Sensor();
            sensors.put(place, sensor);
        }
        sensor.add(timeS, ax, ay, az, gx, gy, gz);
    }

    /** Samples of {@code place} so far. */
    public int size(Place place) {
        Sensor sensor = sensors.get(place);
        return sensor == null ? 0 : sensor.builder.size();
    }

    /**
     * What was collected so far, or empty while the pelvis has not spoken.
     *
     * @param source where it came from, as a person would name it
     */
    public Optional<Recording> recording(String source) {
        SensorRecording pelvis = recording(Place.PELVIS, source);
        return pelvis == null
                ? Optional.empty()
                : Optional.of(new Recording(pelvis, recording(Place.UPPER_BACK, source)));
    }

    private @Nullable SensorRecording recording(Place place, String source) {
        Sensor sensor = sensors.get(place);
        return sensor == null
                ? null
                : new SensorRecording(source, sensor.builder.findClipping().build(), null, sensor.findings(place));
    }

    private static final class Sensor {

        private final SensorStream.Builder builder = new SensorStream.Builder();
        private double startS;
        private double lastS;
        private double intervalS;
        private double shiftS;
        private int restarts;
        private double firstRestartS;
        private int backward;
        private double firstBackwardS;

        void add(double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
            double time = timeS + shiftS;
            if (builder.size() == 0) {
                startS = time;
            } else if (time < lastS - RESTART_S) {
                shiftS = lastS + intervalS - timeS;
                time = lastS + intervalS;
                firstRestartS = restarts++ == 0 ? lastS - startS : firstRestartS;
            } else if (time < lastS) {
                firstBackwardS = backward++ == 0 ? lastS - startS : firstBackwardS;
                return;
            } else if (time > lastS) {
                intervalS = intervalS == 0 ? time - lastS : Math.min(intervalS, time - lastS);
            }
            lastS = time;
            builder.add(time, ax, ay, az, gx, gy, gz);
        }

        List<Finding> findings(Place place) {
            List<Finding> findings = new ArrayList<>();
            if (restarts > 0) {
                findings.add(new Finding(
                        FindingCode.BACKWARD_TIME,
                        Severity.WARNING,
                        "The sensor started anew " + times(restarts) + ", first at " + seconds(firstRestartS)
                                + ": how long it was silent is not known, so time after it is not tied to time before;"
                                + " look at its battery and cable.",
                        place,
                        firstRestartS));
            }
            if (backward > 0) {
                findings.add(new Finding(
                        FindingCode.BACKWARD_TIME,
                        Severity.WARNING,
                        "Time ran backward " + times(backward) + ", first at " + seconds(firstBackwardS)
                                + ": those samples were left out.",
                        place,
                        firstBackwardS));
            }
            return findings;
        }

        private static String times(int count) {
            return count == 1 ? "once" : count + " times";
        }

        private static String seconds(double value) {
            return String.format(Locale.ROOT, "%.2f s", value);
        }
    }
}
