package evenfall.ingest.wire;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one sensor has sent so far, on one time that never runs backward. */
final class SensorTrack {

    private static final Words WORDS = Words.beside(SensorTrack.class);

    /** A clock that goes back further than this was started anew. */
    static final double RESTART_S = 1;

    /** More than this share of lost samples is a warning. */
    private static final double MUCH = 0.01;

    private final int sensor;
    private final SensorStream.Builder builder = new SensorStream.Builder();
    private @Nullable Place place;
    private double startS;
    private double lastS;
    private double intervalS;
    private double shiftS;
    private int restarts;
    private double firstRestartS;
    private int backward;
    private double firstBackwardS;
    private long lost;
    private double firstLostS;

    SensorTrack(int sensor) {
        this.sensor = sensor;
        this.place = SensorId.place(sensor);
    }

    int sensor() {
        return sensor;
    }

    @Nullable Place place() {
        return place;
    }

    void place(@Nullable Place found) {
        place = found;
    }

    /** Takes what the sensor says of itself; a place it was given by somebody stays. */
    void hello(Hello said) {
        builder.accelerationRange(said.accelerationRange() * Gravity.STANDARD);
        builder.turnRateRange(Math.toRadians(said.turnRateRange()));
    }

    int size() {
        return builder.size();
    }

    /** Time of the last sample that was taken, s. */
    double lastS() {
        return lastS;
    }

    /** Takes a sample, unless its time lies before that of the last one; says whether it was taken. */
    boolean add(double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
        double time = timeS + shiftS;
        if (builder.size() == 0) {
            startS = time;
        } else if (time < lastS - RESTART_S) {
            shiftS = lastS + intervalS - timeS;
            time = lastS + intervalS;
            firstRestartS = restarts++ == 0 ? lastS - startS : firstRestartS;
        } else if (time < lastS) {
            firstBackwardS = backward++ == 0 ? lastS - startS : firstBackwardS;
            return false;
        } else if (time > lastS) {
            intervalS = intervalS == 0 ? time - lastS : Math.min(intervalS, time - lastS);
        }
        lastS = time;
        builder.add(time, ax, ay, az, gx, gy, gz);
        return true;
    }

    void lost(long samples) {
        firstLostS = lost == 0 && builder.size() > 0 ? lastS - startS : firstLostS;
        lost += samples;
    }

    long lost() {
        return lost;
    }

    /** What came so far; only once there is a sample. */
    SensorStream stream() {
        return builder.build();
    }

    /** What came so far, for the place it has now; only once there is a sample. */
    SensorRecording recording(String source) {
        return new SensorRecording(source, builder.findClipping().build(), null, findings());
    }

    /** The same, made in a time that does not grow with the number of samples. */
    SensorRecording soFar(String source) {
        return new SensorRecording(source, builder.soFar(), null, findings());
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        if (restarts > 0) {
            findings.add(new Finding(
                    FindingCode.BACKWARD_TIME,
                    Severity.WARNING,
                    WORDS.say("restarted", restarts, Digits.fixed(firstRestartS, 2)),
                    place,
                    firstRestartS));
        }
        if (backward > 0) {
            findings.add(new Finding(
                    FindingCode.BACKWARD_TIME,
                    Severity.WARNING,
                    WORDS.say("backward", backward, Digits.fixed(firstBackwardS, 2)),
                    place,
                    firstBackwardS));
        }
        if (lost > 0) {
            long sent = lost + builder.size();
            findings.add(new Finding(
                    FindingCode.LOST_SAMPLES,
                    (double) lost / sent > MUCH ? Severity.WARNING : Severity.NOTE,
                    WORDS.say("lost", lost, sent, Digits.fixed(100.0 * lost / sent, 2), Digits.fixed(firstLostS, 2)),
                    place,
                    firstLostS));
        }
        return findings;
    }
}
