package evenfall.ingest.quality;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Samples at full scale: how many, in how many bursts, where and on which axes; one finding an instrument. */
final class ClippingCheck {

    private static final Words WORDS = Words.beside(ClippingCheck.class);

    /** Clipped samples closer than this belong to one blow. */
    private static final double BURST_S = 0.25;

    private static final int MOMENTS_TOLD = 5;

    private ClippingCheck() {}

    static List<Finding> check(SensorStream stream) {
        List<Finding> findings = new ArrayList<>();
        Tally acceleration = new Tally();
        Tally turnRate = new Tally();
        for (int i = 0; i < stream.size(); i++) {
            if (stream.accelerationClipped(i)) {
                acceleration.add(stream, i, Axis.ACCELEROMETER, stream.accelerationRange());
            }
            if (stream.turnRateClipped(i)) {
                turnRate.add(stream, i, Axis.GYROSCOPE, stream.turnRateRange());
            }
        }
        if (acceleration.samples > 0) {
            findings.add(acceleration.finding(
                    "accelerometer",
                    full(stream.accelerationRange(), Gravity.STANDARD, "g"),
                    WORDS.say("clipped.accelerometer")));
        }
        if (turnRate.samples > 0) {
            findings.add(turnRate.finding(
                    "gyroscope",
                    full(stream.turnRateRange(), Math.toRadians(1), "deg/s"),
                    WORDS.say("clipped.gyroscope")));
        }
        return findings;
    }

    private static String full(OptionalDouble range, double unit, String name) {
        return range.isEmpty() ? "" : " (" + Digits.fixed(range.getAsDouble() / unit, 0) + " " + name + ")";
    }

    private static final class Tally {

        private final Set<Axis> axes = EnumSet.noneOf(Axis.class);
        private final List<Double> moments = new ArrayList<>();
        private int samples;
        private int bursts;
        private double last = Double.NEGATIVE_INFINITY;

        void add(SensorStream stream, int i, List<Axis> triad, OptionalDouble range) {
            double time = stream.time(i);
            if (time - last > BURST_S) {
                bursts++;
                if (moments.size() < MOMENTS_TOLD) {
                    moments.add(time);
                }
            }
            last = time;
            samples++;
            double largest = 0;
            for (Axis axis : triad) {
                largest = Math.max(largest, Math.abs(axis.value(stream, i)));
            }
            double floor = 0.999 * Math.min(largest, range.orElse(largest));
            for (Axis axis : triad) {
                if (Math.abs(axis.value(stream, i)) >= floor) {
                    axes.add(axis);
                }
            }
        }

        Finding finding(String instrument, String full, String cost) {
            List<String> letters = axes.stream().map(Axis::letter).toList();
            List<String> times =
                    moments.stream().map(moment -> Digits.fixed(moment, 2)).toList();
            String more = bursts > moments.size() ? WORDS.say("clipped.more", bursts - moments.size()) : "";
            return new Finding(
                    FindingCode.CLIPPING,
                    Severity.WARNING,
                    WORDS.say(
                            "clipped",
                            instrument,
                            full,
                            Wording.count(samples, "sample", "samples"),
                            letters.size(),
                            Wording.and(letters),
                            more.isEmpty() ? Wording.and(times) : String.join(", ", times),
                            more,
                            cost),
                    null,
                    moments.get(0));
        }
    }
}
