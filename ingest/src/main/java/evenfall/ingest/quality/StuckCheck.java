package evenfall.ingest.quality;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Axes that stand still while the body does not, instruments and whole sensors that do; one finding for each. */
final class StuckCheck {

    private static final Words WORDS = Words.beside(StuckCheck.class);

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
        tell(stream, both, WORDS.say("held.both"), WORDS.say("held.both.cost"), findings);
        tell(
                stream,
                Span.without(acceleration, both),
                WORDS.say("held.accelerometer"),
                WORDS.say("held.accelerometer.cost"),
                findings);
        tell(
                stream,
                Span.without(turnRate, both),
                WORDS.say("held.gyroscope"),
                WORDS.say("held.gyroscope.cost"),
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
                    WORDS.say("held.axis", axis.letter(), axis.instrument(), when(stream, spans)),
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
                    : WORDS.say("held.once", Wording.moment(from), Wording.moment(to));
        }
        double sum = spans.stream()
                .mapToDouble(span -> stream.time(span.to()) - stream.time(span.from()))
                .sum();
        return WORDS.say(
                "held.often",
                Wording.count(spans.size(), "time", "times"),
                Wording.moment(from),
                Wording.moment(to),
                Wording.length(sum));
    }
}
