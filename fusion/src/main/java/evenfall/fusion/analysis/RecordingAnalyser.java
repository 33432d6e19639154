package evenfall.fusion.analysis;

import evenfall.fusion.alignment.ClockFinder;
import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.TrunkEnd;
import evenfall.fusion.event.Event;
import evenfall.fusion.event.EventFinder;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.parallel.Aside;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Takes a recording the whole way: orientation, alignment, posture, landings, measures. */
public final class RecordingAnalyser {

    private static final Words WORDS = Words.beside(RecordingAnalyser.class);

    /** Clocks tied more loosely than this are told of, ms: common practice, no source. */
    private static final double LOOSE_MS = 5;

    private final FilterKind filter;

    /** An analyser that estimates orientation with {@code filter}. */
    public RecordingAnalyser(FilterKind filter) {
        this.filter = filter;
    }

    /** The filter in use. */
    public FilterKind filter() {
        return filter;
    }

    /**
     * Analyses a recording. A pure function of its input and the filter.
     *
     * @param progress told how far the work has come
     */
    public RecordingAnalysis analyse(Recording recording, Progress progress) {
        progress.at(WORDS, "progress.sensors", 0);
        SensorRecording given = recording.upperBack();
        boolean twice = given != null && BodyChecks.isSame(recording.pelvis().stream(), given.stream());
        SensorRecording worn = twice ? null : given;
        Aside<TrunkSensor> aside =
                worn == null ? null : Aside.start("follow upper back", () -> TrunkSensor.of(follow(worn)));
        Followed pelvis = follow(recording.pelvis());
        progress.at(WORDS, "progress.finding", 0);
        Aside<EventFinder.Found> finding =
                Aside.start("find landings", () -> new EventFinder().all(pelvis.reading().stream(), pelvis.track()));
        List<Finding> findings = new ArrayList<>(recording.pelvis().findings());
        findings.addAll(BodyChecks.ofSensor(pelvis.reading(), Place.PELVIS));
        if (twice) {
            findings.add(new Finding(
                    FindingCode.NO_UPPER_BACK, Severity.ERROR, WORDS.say("upper.same"), Place.UPPER_BACK, null));
        }
        Sensors sensors = new Sensors(pelvis.reading(), pelvis.track(), null, null, null);
        if (worn != null && aside != null) {
            findings.addAll(worn.findings());
            sensors = withUpperBack(TrunkSensor.of(pelvis), aside.result(), finding, findings, progress);
        }
        return new LandingAnalysis(sensors, finding.result(), findings).run(progress);
    }

    private Followed follow(SensorRecording sensor) {
        SensorReading reading = SensorReading.of(sensor);
        OrientationTrack track = reading.orientation(filter);
        return new Followed(reading, track);
    }

    private static Sensors withUpperBack(
            TrunkSensor pelvisEnd,
            TrunkSensor upperBackEnd,
            Aside<EventFinder.Found> finding,
            List<Finding> findings,
            Progress progress) {
        Followed pelvis = pelvisEnd.sensor();
        Followed upperBack = upperBackEnd.sensor();
        findings.addAll(BodyChecks.ofSensor(upperBack.reading(), Place.UPPER_BACK));
        findings.addAll(BodyChecks.ofPair(pelvis.reading(), upperBack.reading()));
        progress.at(WORDS, "progress.clocks", 0);
        ClockFinder clocks = ClockFinder.of(pelvisEnd.end(), upperBackEnd.end());
        ClockMap clock = clocks.map(landings(finding.result().events()).stream()
                .map(Event::contactS)
                .toList());
        if (clock == null) {
            findings.add(new Finding(FindingCode.CLOCK_UNCERTAIN, Severity.ERROR, WORDS.say("clock.none"), null, null));
        } else if (clock.sigmaMs() > LOOSE_MS) {
            findings.add(new Finding(
                    FindingCode.CLOCK_UNCERTAIN,
                    Severity.WARNING,
                    WORDS.say("clock.loose", Digits.fixed(clock.sigmaMs(), 0)),
                    null,
                    null));
        }
        Double rival = clock == null ? null : clock.rivalS();
        if (clock != null && rival != null) {
            findings.add(new Finding(
                    FindingCode.CLOCK_UNCERTAIN,
                    Severity.WARNING,
                    WORDS.say("clock.rival", Digits.fixed(clock.offsetS(), 1), Digits.fixed(rival, 1)),
                    null,
                    null));
        }
        return new Sensors(pelvis.reading(), pelvis.track(), upperBack.reading(), upperBack.track(), clock);
    }

    static List<Event> landings(List<Event> events) {
        return events.stream()
                .filter(event -> event.kind() == EventKind.LANDING)
                .toList();
    }

    /** One sensor with its orientation. */
    private record Followed(SensorReading reading, OrientationTrack track) {}

    /** One of two sensors, with what their clocks are compared by. */
    private record TrunkSensor(Followed sensor, TrunkEnd end) {

        static TrunkSensor of(Followed sensor) {
            return new TrunkSensor(sensor, TrunkEnd.of(sensor.reading().stream(), sensor.track()));
        }
    }

    /** The sensors of one recording; those of the upper back are null without it. */
    record Sensors(
            SensorReading pelvis,
            OrientationTrack pelvisTrack,
            @Nullable SensorReading upperBack,
            @Nullable OrientationTrack upperBackTrack,
            @Nullable ClockMap clock) {}
}
