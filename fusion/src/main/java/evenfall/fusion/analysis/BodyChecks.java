package evenfall.fusion.analysis;

import evenfall.fusion.alignment.ForwardBend;
import evenfall.fusion.alignment.GyroSense;
import evenfall.fusion.alignment.Median;
import evenfall.fusion.alignment.StrapWatch;
import evenfall.fusion.rotation.SensorAxes;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.BodyAxes;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Checks how sensors sit on a body: a mirrored gyroscope, a sensor upside down, the two swapped, a strap that moved.
 * What only the samples tell (gaps, clipping, units) is checked where they are read.
 */
public final class BodyChecks {

    private static final Words WORDS = Words.beside(BodyChecks.class);

    /** Further from the stated up than this is upside down, rad. */
    private static final double UPSIDE_DOWN = Math.toRadians(120);
    /** The trunk bends at least as deep as the pelvis; this much less means that the sensors are swapped. */
    private static final double SWAPPED_BENDS = 0.85;
    /** Without bends, impacts that are so much harder at the shoulders than at the pelvis mean the same. */
    private static final double SWAPPED_PEAKS = 1.3;

    private static final int LEAST_PEAKS = 4;
    private static final double PEAK_FLOOR = 2.5 * Gravity.STANDARD;
    private static final double PEAKS_APART_S = 2;

    private BodyChecks() {}

    /** What is doubtful about the sensors of a recording, in order of sensor and time. */
    public static List<Finding> find(Recording recording) {
        List<Finding> findings = new ArrayList<>();
        SensorReading pelvis = SensorReading.of(recording.pelvis());
        findings.addAll(ofSensor(pelvis, Place.PELVIS));
        SensorRecording worn = recording.upperBack();
        if (worn != null) {
            SensorReading upperBack = SensorReading.of(worn);
            findings.addAll(ofSensor(upperBack, Place.UPPER_BACK));
            findings.addAll(ofPair(pelvis, upperBack));
        }
        return List.copyOf(findings);
    }

    /** What is doubtful about one sensor, wherever it was worn; findings name no place. */
    public static List<Finding> find(SensorRecording sensor) {
        return ofSensor(SensorReading.of(sensor), null);
    }

    static List<Finding> ofSensor(SensorReading reading, @Nullable Place place) {
        String whose = place == null ? WORDS.say("sensor.this") : "the " + place.words();
        List<Finding> findings = new ArrayList<>();
        if (reading.sense().mirrored()) {
            findings.add(new Finding(
                    FindingCode.GYRO_SENSE,
                    Severity.WARNING,
                    WORDS.say("gyroscope.sense", whose, axes(reading.sense())),
                    place,
                    null));
        }
        Finding upsideDown = upsideDown(reading, whose, place);
        if (upsideDown != null) {
            findings.add(upsideDown);
        }
        for (StrapWatch.Move move : reading.moves()) {
            findings.add(new Finding(
                    FindingCode.STRAP_MOVED,
                    Severity.WARNING,
                    WORDS.say(
                            "strap.moved",
                            whose,
                            Digits.fixed(Math.toDegrees(move.angle()), 0),
                            Digits.fixed(move.atS(), 0)),
                    place,
                    move.atS()));
        }
        return findings;
    }

    private static String axes(GyroSense sense) {
        List<String> axes = new ArrayList<>();
        if (sense.x()) {
            axes.add("x");
        }
        if (sense.y()) {
            axes.add("y");
        }
        if (sense.z()) {
            axes.add("z");
        }
        return axes.size() == 3 ? WORDS.say("axes.all") : " about " + String.join(" and ", axes);
    }

    /** Over a whole recording a body is mostly upright, walking or standing, so the mean force points up. */
    private static @Nullable Finding upsideDown(SensorReading reading, String whose, @Nullable Place place) {
        BodyAxes axes = reading.recording().axes();
        if (axes == null) {
            return null;
        }
        Vector3 force =
                SensorAxes.forceSum(reading.stream(), 0, reading.stream().size());
        if (force.angleTo(SensorAxes.direction(axes.up())) < UPSIDE_DOWN) {
            return null;
        }
        return new Finding(
                FindingCode.UPSIDE_DOWN, Severity.ERROR, WORDS.say("upside.down", axes.up(), whose), place, null);
    }

    /** Whether two recordings are one, given twice: two sensors never read alike to the last digit. */
    static boolean isSame(SensorStream one, SensorStream other) {
        int n = one.size();
        for (int i = 0; i < n && n == other.size(); i++) {
            if (one.time(i) != other.time(i)
                    || one.ax(i) != other.ax(i)
                    || one.ay(i) != other.ay(i)
                    || one.az(i) != other.az(i)
                    || one.gx(i) != other.gx(i)
                    || one.gy(i) != other.gy(i)
                    || one.gz(i) != other.gz(i)) {
                return false;
            }
        }
        return n == other.size();
    }

    static List<Finding> ofPair(SensorReading pelvis, SensorReading upperBack) {
        double bends = depth(upperBack) / depth(pelvis);
        boolean byBends = bends > 0 && Double.isFinite(bends);
        boolean swapped = byBends ? bends < SWAPPED_BENDS : harderAbove(pelvis.stream(), upperBack.stream());
        if (!swapped) {
            return List.of();
        }
        return List.of(new Finding(
                FindingCode.SENSORS_SWAPPED,
                Severity.WARNING,
                WORDS.say("swapped", WORDS.say(byBends ? "swapped.bends" : "swapped.shaken")),
                null,
                null));
    }

    private static boolean harderAbove(SensorStream pelvis, SensorStream upperBack) {
        double[] low = peaks(pelvis);
        double[] high = peaks(upperBack);
        return low.length >= LEAST_PEAKS
                && high.length >= LEAST_PEAKS
                && Median.of(high) / Median.of(low) > SWAPPED_PEAKS;
    }

    /** Median depth of the opening bends, rad; 0 without any. */
    private static double depth(SensorReading reading) {
        double[] depths = reading.opening(reading.stream().durationS()).bends().stream()
                .mapToDouble(ForwardBend::depth)
                .toArray();
        return depths.length == 0 ? 0 : Median.of(depths);
    }

    private static double[] peaks(SensorStream s) {
        List<Double> peaks = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < s.size(); i++) {
            double size = s.resultant(i);
            if (size < PEAK_FLOOR) {
                continue;
            }
            if (s.time(i) - last > PEAKS_APART_S) {
                peaks.add(size);
            } else {
                peaks.set(peaks.size() - 1, Math.max(size, peaks.get(peaks.size() - 1)));
            }
            last = s.time(i);
        }
        return peaks.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
