package evenfall.fusion.analysis;

import evenfall.fusion.alignment.ClockFollower;
import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.GyroSense;
import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.alignment.OpeningRoutine;
import evenfall.fusion.alignment.Stance;
import evenfall.fusion.alignment.StrapWatch;
import evenfall.fusion.event.Event;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.LandingMeasurer;
import evenfall.fusion.landing.LandingMeasurer.Measured;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SegmentAngles;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Analyses a recording while it grows: each landing is told once, as soon as it has settled, by all that came until then.
 *
 * <p>The work a second does not grow with the recording. Orientation is the causal filter's, a step a sample; events are
 * looked for in the last seconds; a landing is smoothed alone, with what earlier ones told of the sensors; mountings and
 * clocks are found anew when something new tells of them. The measuring itself is that of {@link RecordingAnalyser}. Knows no
 * clock but the sensors'. Not safe for use from several threads.
 */
public final class LiveAnalyser {

    /** The least recording that tells a rate, s. */
    private static final double LEAST_S = 2;
    /** Events are looked for so often, s. */
    private static final double LOOK_EVERY_S = 0.1;
    /** The opening routine and the clocks are looked at so often, s, */
    private static final double SURVEY_EVERY_S = 1;
    /** the clocks, once they are tied together, so often. */
    private static final double CLOCK_EVERY_S = 10;
    /** A fall is told so long after its impact, s: until then nobody is seen to lie. */
    private static final double FALL_AFTER_S = 0.9;
    /** Falls nearer to one another than this are the same, s. */
    private static final double SAME_FALL_S = 3;
    /** Two looks at one landing differ by less, s. */
    private static final double SAME_LANDING_S = 0.3;
    /** Only so many of the last told may be seen again: a look reaches no further back. */
    private static final int LAST_TOLD = 10;
    /** Who stood still so shortly before the newest sample stands still, s: stillness is told block by block. */
    private static final double STILL_WITHIN_S = 0.3;
    /** After so long nothing more is learned from a landing, s. */
    private static final double DONE_AFTER_S = 6;

    private @Nullable LiveSensor pelvis;
    private @Nullable LiveSensor upperBack;
    private ClockFollower clocks = new ClockFollower();
    private @Nullable ClockMap clock;
    private LiveEvents events = new LiveEvents();
    private @Nullable BodyMounting mounting;
    private final List<Double> told = new ArrayList<>();
    private final List<Double> falls = new ArrayList<>();
    private final List<Told> undone = new ArrayList<>();
    private int lastIndex;
    private double lookedAtS = Double.NEGATIVE_INFINITY;
    private double surveyedAtS = Double.NEGATIVE_INFINITY;
    private double clockedAtS = Double.NEGATIVE_INFINITY;

    /** A landing that was told and may still teach something of the sensors. */
    private record Told(Event event, double earliestS) {}

    /**
     * Takes what came since the last call.
     *
     * @param soFar the recording so far, which begins with what was given before
     */
    public LiveNews advance(Recording soFar) {
        return advance(soFar, false, false);
    }

    /** Takes what came since the last call as the end: landings that have not settled are told as they are. */
    public LiveNews end(Recording whole) {
        return advance(whole, true, false);
    }

    /** The same, at the end or not, and once all was worked out anew or not. */
    private LiveNews advance(Recording soFar, boolean end, boolean anew) {
        boolean anotherPelvis = isAnother(pelvis, soFar.pelvis());
        if (anotherPelvis) {
            // What was told stands on a clock that is no more.
            told.clear();
            falls.clear();
        }
        if (anotherPelvis || isAnother(upperBack, soFar.upperBack())) {
            startAnew(GyroSense.RIGHT, GyroSense.RIGHT, soFar);
        }
        follow(soFar);
        LiveSensor worn = pelvis;
        double now = soFar.pelvis().stream().durationS();
        if (worn == null || (!end && now < lookedAtS + LOOK_EVERY_S)) {
            return LiveNews.NONE;
        }
        lookedAtS = now;
        worn.takeStock();
        LiveSensor upper = upperBack;
        if (upper != null) {
            upper.takeStock();
        }
        if (readWrongly(worn) || (upper != null && readWrongly(upper))) {
            startAnew(worn.senseSoFar(), upper == null ? GyroSense.RIGHT : upper.senseSoFar(), soFar);
            return end && !anew ? advance(soFar, true, true) : LiveNews.NONE;
        }
        events.look(worn.reading().stream(), worn.track());
        finish(worn, now);
        if (now >= surveyedAtS + SURVEY_EVERY_S) {
            surveyedAtS = now;
            survey(worn, now);
        }
        return new LiveNews(landings(worn, now, end), fallen(now, end));
    }

    private void follow(Recording soFar) {
        pelvis = follow(Place.PELVIS, pelvis, soFar.pelvis(), GyroSense.RIGHT);
        SensorRecording worn = soFar.upperBack();
        if (worn != null) {
            upperBack = follow(Place.UPPER_BACK, upperBack, worn, GyroSense.RIGHT);
        }
    }

    private @Nullable LiveSensor follow(
            Place place, @Nullable LiveSensor known, SensorRecording soFar, GyroSense sense) {
        LiveSensor sensor = known;
        if (sensor == null
                && soFar.stream().durationS() >= LEAST_S
                && soFar.stream().rateHz() > 0) {
            sensor = new LiveSensor(
                    place, soFar, sense, place == Place.PELVIS ? clocks::addPelvis : clocks::addUpperBack);
            LiveSensor worn = pelvis;
            sensor.comesAfter(place == Place.PELVIS || worn == null ? 0 : worn.landingsDone());
        }
        if (sensor != null) {
            sensor.follow(soFar);
        }
        return sensor;
    }

    private static boolean readWrongly(LiveSensor sensor) {
        return !sensor.senseSoFar().equals(sensor.sense());
    }

    /** Another sensor has come to this place: not the one that was followed. */
    private static boolean isAnother(@Nullable LiveSensor known, @Nullable SensorRecording soFar) {
        return known != null && (soFar == null || !known.isOf(soFar.stream()));
    }

    /** A gyroscope turns out to be mirrored, or a sensor to be another: all is worked out again, but nothing is told twice. */
    private void startAnew(GyroSense sense, GyroSense upperSense, Recording soFar) {
        clocks = new ClockFollower();
        clock = null;
        events = new LiveEvents();
        mounting = null;
        undone.clear();
        lookedAtS = Double.NEGATIVE_INFINITY;
        surveyedAtS = Double.NEGATIVE_INFINITY;
        clockedAtS = Double.NEGATIVE_INFINITY;
        pelvis = follow(Place.PELVIS, null, soFar.pelvis(), sense);
        SensorRecording other = soFar.upperBack();
        upperBack = other == null ? null : follow(Place.UPPER_BACK, null, other, upperSense);
    }

    /** What changes slowly: the opening routine until the first landing, and the clocks. */
    private void survey(LiveSensor worn, double now) {
        LiveSensor upper = upperBack;
        if (upper != null && now >= clockedAtS + (clock == null ? SURVEY_EVERY_S : CLOCK_EVERY_S)) {
            clockedAtS = now;
            clock = clocks.map(told);
        }
        if (told.isEmpty()) {
            events.lookForHeelDrops(worn.reading().stream(), worn.track());
        }
        boolean changed = worn.lookForOpening(Double.POSITIVE_INFINITY);
        if (upper != null) {
            changed |= upper.lookForOpening(Double.POSITIVE_INFINITY);
        }
        if (changed || mounting == null) {
            mounting = mounting(null, null, 0);
        }
    }

    private BodyMounting mounting(@Nullable SensorMotion motion, @Nullable SensorMotion upperMotion, double contactS) {
        LiveSensor worn = pelvis;
        LiveSensor upper = upperBack;
        if (worn == null) {
            throw new IllegalStateException("no pelvis yet");
        }
        return new BodyMounting(
                worn.segment(motion, contactS),
                upper == null ? null : upper.segment(upperMotion, toUpperBack(contactS)));
    }

    private double toUpperBack(double pelvisS) {
        ClockMap map = clock;
        return map == null ? pelvisS : map.toUpperBack(pelvisS);
    }

    /** Learns from landings told some time ago what they tell of the sensors, now that all about them has come. */
    private void finish(LiveSensor worn, double now) {
        boolean learned = false;
        while (!undone.isEmpty()) {
            Told first = undone.get(0);
            double contact = first.event().contactS();
            double untilS = Math.min(events.startAfter(contact), now);
            if (now < contact + DONE_AFTER_S && untilS >= now) {
                break;
            }
            LandingSpan span = new LandingSpan(first.earliestS(), contact, untilS);
            worn.done(span);
            LiveSensor upper = upperBack;
            if (upper != null) {
                upper.done(span.on(this::toUpperBack));
            }
            undone.remove(0);
            learned = true;
        }
        if (learned) {
            mounting = mounting(null, null, 0);
        }
    }

    private List<Measured> landings(LiveSensor worn, double now, boolean end) {
        List<Measured> landings = new ArrayList<>();
        for (Event event : events.open()) {
            if (event.kind() == EventKind.LANDING && isNew(told, event.contactS(), SAME_LANDING_S)) {
                Measured measured = look(worn, event, now, end);
                if (measured == null) {
                    // Later ones wait, so that all come in order.
                    break;
                }
                landings.add(measured);
                told.add(event.contactS());
                undone.add(new Told(event, events.endBefore(event)));
            }
        }
        return landings;
    }

    /** The landing if it is time to tell it, else null. */
    private @Nullable Measured look(LiveSensor worn, Event event, double now, boolean end) {
        double contact = event.contactS();
        double next = events.startAfter(contact);
        LandingSpan span = new LandingSpan(events.endBefore(event), contact, Math.min(next, now));
        SensorMotion motion = worn.motion(span);
        Patience patience = new Patience(now, contact, next);
        Double settledS =
                LandingMeasurer.moments(motion.motion(0), event, span.untilS()).settledS();
        if (!end && !patience.isOver(settledS, motion.cut(0).after(), upperBackUntil())) {
            return null;
        }
        LiveSensor upper = upperBack;
        worn.lookForMoves();
        if (upper != null) {
            upper.lookForMoves();
        }
        if (upper != null && (clock == null || told.isEmpty())) {
            clock = clocks.map(told);
        }
        if (told.isEmpty()) {
            worn.lookForOpening(contact);
            if (upper != null) {
                upper.lookForOpening(toUpperBack(contact));
            }
        }
        motion = worn.motion(span);
        SensorMotion upperMotion = upper == null ? null : upper.motion(span.on(this::toUpperBack));
        BodyMounting mountings = mounting(motion, upperMotion, contact);
        mounting = mountings;
        lastIndex = Math.max(events.countBefore(event), lastIndex) + 1;
        return LandingMeasurer.measure(
                new SceneMaker(worn.reading().stream(), mountings, clock)
                        .scene(
                                event,
                                span.untilS(),
                                new SceneMaker.Part(motion.cut(0), motion.motion(0)),
                                upperMotion == null
                                        ? null
                                        : new SceneMaker.Part(upperMotion.cut(0), upperMotion.motion(0))),
                lastIndex);
    }

    /** How far the upper back's samples reach, s on the pelvis's clock; infinite without them. */
    private double upperBackUntil() {
        LiveSensor upper = upperBack;
        ClockMap map = clock;
        return upper == null || map == null
                ? Double.POSITIVE_INFINITY
                : map.toPelvis(upper.reading().stream().durationS());
    }

    private List<Double> fallen(double now, boolean end) {
        List<Double> fallen = new ArrayList<>();
        for (Event event : events.open()) {
            if (event.kind() == EventKind.FALL
                    && (end || now >= event.endS() + FALL_AFTER_S)
                    && isNew(falls, event.contactS(), SAME_FALL_S)) {
                falls.add(event.contactS());
                fallen.add(event.contactS());
            }
        }
        return fallen;
    }

    private static boolean isNew(List<Double> known, double contact, double same) {
        for (int k = known.size() - 1; k >= Math.max(0, known.size() - LAST_TOLD); k--) {
            if (Math.abs(known.get(k) - contact) < same) {
                return false;
            }
        }
        return true;
    }

    /** Whether another event has begun after the last landing told. */
    public boolean goesOn() {
        return !told.isEmpty() && events.startAfter(told.get(told.size() - 1)) < Double.POSITIVE_INFINITY;
    }

    /**
     * When the strap of a sensor moved after the first landing that was told, s on the sensor's clock: as it was known when the
     * last landing was looked at.
     */
    public List<Double> strapMoves(Place place) {
        LiveSensor sensor = place == Place.PELVIS ? pelvis : upperBack;
        if (sensor == null || told.isEmpty()) {
            return List.of();
        }
        double fromS = place == Place.PELVIS ? told.get(0) : toUpperBack(told.get(0));
        return sensor.reading().moves().stream()
                .map(StrapWatch.Move::atS)
                .filter(atS -> atS > fromS)
                .toList();
    }

    /** How a segment stands at its newest sample, or null while too little came. */
    public @Nullable Level level(Place place) {
        LiveSensor sensor = place == Place.PELVIS ? pelvis : upperBack;
        BodyMounting mountings = mounting;
        if (sensor == null
                || mountings == null
                || (place == Place.UPPER_BACK && !mountings.first().containsKey(place))) {
            return null;
        }
        OrientationTrack track = sensor.track();
        double timeS = sensor.reading().stream().time(track.size() - 1);
        Mounting sits = mountings.at(place, timeS);
        Quaternion sensorFromSegment = sits.segmentFromSensor().conjugate();
        SegmentAngles angles = SegmentAngles.of(track.at(track.size() - 1).times(sensorFromSegment));
        return new Level(timeS, angles.flexionDegrees(), angles.leanDegrees(), sits.method());
    }

    /** How far the opening routine has come. */
    public OpeningState opening() {
        LiveSensor worn = pelvis;
        LiveSensor upper = upperBack;
        Map<Place, Integer> bends = new EnumMap<>(Place.class);
        double standing = 0;
        double stance = 0;
        if (worn != null) {
            bends.put(Place.PELVIS, bends(worn));
            standing = standing(worn);
            Stance zero = worn.opening().stance();
            stance = zero == null ? 0 : zero.lengthS();
        }
        if (upper != null) {
            bends.put(Place.UPPER_BACK, bends(upper));
        }
        ClockMap map = clock;
        return new OpeningState(
                standing, stance, bends, events.heelDrops(), map == null ? null : map.sigmaMs(), !told.isEmpty());
    }

    private int bends(LiveSensor sensor) {
        OpeningRoutine seen = sensor.opening();
        return told.isEmpty()
                ? seen.bendsAfterStanding(sensor.reading().stances())
                : seen.bends().size();
    }

    private static double standing(LiveSensor worn) {
        List<Stance> stances = worn.reading().stances();
        double now = worn.reading().stream().durationS();
        Stance last = stances.isEmpty() ? null : stances.get(stances.size() - 1);
        return last == null || last.endS() < now - STILL_WITHIN_S ? 0 : last.lengthS();
    }
}
