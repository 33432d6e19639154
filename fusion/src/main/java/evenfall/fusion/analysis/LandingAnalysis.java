package evenfall.fusion.analysis;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.OpeningRoutine;
import evenfall.fusion.event.Event;
import evenfall.fusion.event.EventFinder;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.LandingMeasurer;
import evenfall.fusion.landing.LandingScene;
import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.parallel.Aside;
import evenfall.ingest.parallel.SideBySide;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** From sensors whose events are known to landings with measures. */
final class LandingAnalysis {

    private static final Words WORDS = Words.beside(LandingAnalysis.class);

    private final RecordingAnalyser.Sensors sensors;
    private final List<Event> events;
    private final List<Double> heelDropsS;
    private final List<Event> landings;
    private final List<Finding> findings;

    LandingAnalysis(RecordingAnalyser.Sensors sensors, EventFinder.Found found, List<Finding> findings) {
        this.sensors = sensors;
        this.events = found.events();
        this.heelDropsS = found.heelDropsS();
        this.landings = RecordingAnalyser.landings(events);
        this.findings = findings;
    }

    RecordingAnalysis run(Progress progress) {
        SensorStream stream = sensors.pelvis().stream();
        progress.at(WORDS, "progress.landings", 0);
        List<LandingSpan> spans = spans();
        ClockMap clock = sensors.clock();
        SensorReading upperReading = sensors.upperBack();
        OrientationTrack upperTrack = sensors.upperBackTrack();
        Aside<Worn> aside = null;
        if (upperReading != null && upperTrack != null) {
            List<LandingSpan> onUpper = clock == null
                    ? spans
                    : spans.stream().map(span -> span.on(clock::toUpperBack)).toList();
            aside = Aside.start(
                    "prepare upper back", () -> prepare(Place.UPPER_BACK, upperReading, upperTrack, onUpper));
        }
        Worn pelvis = prepare(Place.PELVIS, sensors.pelvis(), sensors.pelvisTrack(), spans);
        Worn upper = aside == null ? null : aside.result();
        findings.addAll(pelvis.findings());
        if (upper != null) {
            findings.addAll(upper.findings());
        }
        BodyMounting mounting = new BodyMounting(pelvis.segment(), upper == null ? null : upper.segment());
        findings.addAll(mounting.findings());
        List<LandingMeasurer.Measured> measured = measure(pelvis, upper, mounting, spans, progress);
        boolean wrongUnit = findings.stream().anyMatch(Finding::isWrongUnit);
        List<Landing> found = new ArrayList<>();
        Map<Integer, LandingTrace> traces = new HashMap<>();
        int landing = 0;
        for (int k = 0; k < events.size(); k++) {
            Event event = events.get(k);
            if (event.kind() == EventKind.LANDING) {
                LandingMeasurer.Measured one = measured.get(landing++);
                found.add(wrongUnit ? one.landing().flagged(LandingFlag.WRONG_UNIT) : one.landing());
                traces.put(k + 1, one.trace());
            } else {
                found.add(plain(event, k + 1));
            }
        }
        progress.at(WORDS, "progress.measuring", 1);
        return new RecordingAnalysis(
                stream.durationS(), stream.rateHz(), clock, mounting.first(), findings, heelDropsS, found, traces);
    }

    private List<LandingMeasurer.Measured> measure(
            Worn pelvis, @Nullable Worn upper, BodyMounting mounting, List<LandingSpan> spans, Progress progress) {
        SceneMaker scenes = new SceneMaker(sensors.pelvis().stream(), mounting, sensors.clock());
        int[] places = IntStream.range(0, events.size())
                .filter(k -> events.get(k).kind() == EventKind.LANDING)
                .toArray();
        Thread teller = Thread.currentThread();
        return SideBySide.map("measure landings", landings.size(), k -> {
            if (Thread.currentThread() == teller) {
                progress.at(WORDS, "progress.measuring", (double) k / landings.size());
            }
            LandingScene scene = scenes.scene(
                    landings.get(k), spans.get(k).untilS(), pelvis.part(k), upper == null ? null : upper.part(k));
            return LandingMeasurer.measure(scene, places[k] + 1);
        });
    }

    private static Landing plain(Event event, int index) {
        return new Landing(
                index,
                event.kind(),
                new Moments(event.startS(), event.contactS(), event.peakS(), null, null),
                event.kind() == EventKind.STEPS ? event.count() : null,
                null,
                Set.of());
    }

    /** For each landing: end of the event before, contact, begin of the event after, s on the pelvis's clock. */
    private List<LandingSpan> spans() {
        List<LandingSpan> spans = new ArrayList<>();
        for (int k = 0; k < events.size(); k++) {
            if (events.get(k).kind() == EventKind.LANDING) {
                spans.add(new LandingSpan(
                        k == 0 ? 0 : events.get(k - 1).endS(),
                        events.get(k).contactS(),
                        k + 1 < events.size()
                                ? events.get(k + 1).startS()
                                : sensors.pelvis().stream().durationS()));
            }
        }
        return spans;
    }

    /** A sensor's motion, and what its mounting is found from. */
    private record Worn(SensorMotion motion, BodyMounting.Segment segment, List<Finding> findings) {

        SceneMaker.Part part(int k) {
            return new SceneMaker.Part(motion.cut(k), motion.motion(k));
        }
    }

    private Worn prepare(Place place, SensorReading reading, OrientationTrack track, List<LandingSpan> spans) {
        double beforeS =
                spans.isEmpty() ? reading.stream().durationS() : spans.get(0).contactS();
        OpeningRoutine opening = reading.opening(beforeS);
        SensorMotion motion = new SensorMotion(reading, track, opening, spans);
        double[] contacts = spans.stream().mapToDouble(LandingSpan::contactS).toArray();
        List<TakeoffHeadings.Takeoff> takeoffs = new ArrayList<>();
        for (int k = 0; k < contacts.length; k++) {
            takeoffs.add(TakeoffHeadings.Takeoff.of(motion, k, contacts[k]));
        }
        SegmentMounting mounting = new SegmentMounting(
                place, reading, motion::correct, opening, new TakeoffHeadings(reading.stream(), takeoffs));
        List<Finding> missing = new ArrayList<>();
        if (opening.bends().isEmpty() && reading.recording().axes() == null) {
            missing.add(new Finding(
                    FindingCode.NO_OPENING_ROUTINE,
                    Severity.WARNING,
                    WORDS.say("routine.none", place.words()),
                    place,
                    null));
        }
        return new Worn(motion, new BodyMounting.Segment(reading, contacts, mounting), missing);
    }
}
