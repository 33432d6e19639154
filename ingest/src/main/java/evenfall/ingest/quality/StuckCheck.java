package evenfall.ingest.quality;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Axes that stand still while the body does not, instruments and whole sensors that do; one finding for each. */
final class StuckCheck {

    /** Rest is judged by medians, which a smaller share cannot turn. */
    private static final double SPOILT = 0.1;

    private final SensorStream stream;
    private final Map<Axis, List<Span>> held = new EnumMap<>(Axis.class);

    private StuckCheck(SensorStream stream) {
        this.stream = stream;
    }

    static StuckCheck of(SensorStream stream) {
        StuckCheck check = new StuckCheck(stream);
        if (stream.size() >= HeldRuns.shortest(stream)) {
            for (Axis axis : Axis.values()) {
                check.held.put(axis, held(stream, axis));
            }
        }
        return check;
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        List<Span> acceleration = all(Axis.ACCELEROMETER);
        List<Span> turnRate = all(Axis.GYROSCOPE);
        List<Span> both = longEnough(stream, Span.common(acceleration, turnRate));
        tell(
                stream,
                both,
                "The sensor gave one and the same sample over and over",
                "nothing is known of this time; look at battery and cable.",
                findings);
        tell(
                stream,
                Span.without(acceleration, both),
                "The accelerometer gave one and the same value on all axes",
                "no blow can be read there; the sensor may be broken.",
                findings);
        tell(
                stream,
                Span.without(turnRate, both),
                "The gyroscope gave one and the same value on all axes",
                "no angle can be read there; the sensor may be broken.",
                findings);
        for (Axis axis : Axis.values()) {
            List<Span> whole = Axis.ACCELEROMETER.contains(axis) ? acceleration : turnRate;
            stuck(stream, axis, Span.without(held(axis), whole), findings);
        }
        return findings;
    }

    /** Whether some axis of an instrument stands still for so long that what rest shows of it means nothing. */
    boolean spoils(List<Axis> triad) {
        for (Axis axis : triad) {
            int samples = held(axis).stream().mapToInt(Span::length).sum();
            if (samples > SPOILT * stream.size()) {
                return true;
            }
        }
        return false;
    }

    private List<Span> held(Axis axis) {
        return held.getOrDefault(axis, List.of());
    }

    /** Runs that are held, but for those at full scale: they are told as clipping. */
    private static List<Span> held(SensorStream stream, Axis axis) {
        boolean gyroscope = Axis.GYROSCOPE.contains(axis);
        return HeldRuns.of(stream, axis).stream()
                .filter(run -> run.length() > stream.size() / 2
                        || !(gyroscope ? stream.turnRateClipped(run.from()) : stream.accelerationClipped(run.from())))
                .toList();
    }

    private List<Span> all(List<Axis> triad) {
        List<Span> shared = held(triad.get(0));
        for (Axis axis : triad.subList(1, 3)) {
            shared = Span.common(shared, held(axis));
        }
        return longEnough(stream, shared);
    }

    private static List<Span> longEnough(SensorStream stream, List<Span> spans) {
        int shortest = HeldRuns.shortest(stream);
        return spans.stream().filter(span -> span.length() >= shortest).toList();
    }

    private static void tell(SensorStream stream, List<Span> spans, String what, String cost, List<Finding> findings) {
        if (!spans.isEmpty()) {
            findings.add(new Finding(
                    FindingCode.DEAD_SENSOR,
                    Severity.ERROR,
                    what + " " + when(stream, spans) + ": " + cost,
                    null,
                    stream.time(spans.get(0).from())));
        }
    }

    private static void stuck(SensorStream stream, Axis axis, List<Span> spans, List<Finding> findings) {
        if (!spans.isEmpty()) {
            findings.add(new Finding(
                    FindingCode.STUCK_AXIS,
                    Severity.ERROR,
                    "Axis " + axis.letter() + " of the " + axis.instrument() + " stood still "
                            + when(stream, spans)
                            + " while the rest did not: what is measured there is wrong; the sensor may be broken.",
                    null,
                    stream.time(spans.get(0).from())));
        }
    }

    private static String when(SensorStream stream, List<Span> spans) {
        Span first = spans.get(0);
        double from = stream.time(first.from());
        double to = stream.time(first.to());
        if (spans.size() == 1) {
            return first.length() == stream.size()
                    ? "throughout"
                    : "from " + Wording.moment(from) + " to " + Wording.moment(to);
        }
        double sum = spans.stream()
                .mapToDouble(span -> stream.time(span.to()) - stream.time(span.from()))
                .sum();
        return Wording.count(spans.size(), "time", "times") + ", first from " + Wording.moment(from) + " to "
                + Wording.moment(to) + ", " + Wording.length(sum) + " in all";
    }
}
