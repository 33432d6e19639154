package evenfall.fusion.analysis;

import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.alignment.StrapGive;
import evenfall.fusion.alignment.StrapGiveFinder;
import evenfall.fusion.alignment.StrapWatch;
import evenfall.fusion.alignment.Straying;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.place.Place;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How all worn sensors sit through a recording: first each by itself, with the moves that gravity shows, then with the
 * turns about the vertical that their take-offs tell together.
 */
final class BodyMounting {

    private static final Words WORDS = Words.beside(BodyMounting.class);

    /**
     * A sensor that is to be mounted.
     *
     * @param contactS contact of each landing, s on the sensor's clock
     */
    @SuppressWarnings("ArrayRecordComponent") // read here alone, compared by nobody
    record Segment(SensorReading reading, double[] contactS, SegmentMounting mounting) {

        private StrapGive give(MountingTimeline timeline) {
            StrapGiveFinder finder = new StrapGiveFinder(reading.stream());
            for (double contact : contactS) {
                finder.add(contact, timeline.at(contact).segmentFromSensor());
            }
            return finder.solve();
        }
    }

    private final Map<Place, Segment> segments = new EnumMap<>(Place.class);
    private final Map<Place, MountingTimeline> timelines = new EnumMap<>(Place.class);
    private final Map<Place, SegmentMounting.Shown> shown = new EnumMap<>(Place.class);
    private final Map<Place, StrapGive> gives = new EnumMap<>(Place.class);
    private final List<Finding> findings = new ArrayList<>();

    BodyMounting(Segment pelvis, @Nullable Segment upperBack) {
        segments.put(Place.PELVIS, pelvis);
        if (upperBack != null) {
            segments.put(Place.UPPER_BACK, upperBack);
        }
        Map<Place, List<StrapWatch.Move>> moves = new EnumMap<>(Place.class);
        segments.forEach((place, segment) -> moves.put(place, segment.reading().moves()));
        mount(moves);
        Map<Place, List<StrapWatch.Move>> withTurns = new EnumMap<>(Place.class);
        moves.forEach((place, byGravity) -> withTurns.put(place, withTurns(place, byGravity)));
        if (!withTurns.equals(moves)) {
            mount(withTurns);
        }
        segments.forEach(this::judge);
    }

    /** Mounts all sensors; how far the person strays, they tell together. */
    private void mount(Map<Place, List<StrapWatch.Move>> moves) {
        moves.forEach((place, own) -> shown.put(place, mounting(place).shown(own)));
        Straying straying = Straying.USUAL;
        for (Map.Entry<Place, SegmentMounting.Shown> own : shown.entrySet()) {
            straying = straying.with(mounting(own.getKey()).straying(own.getValue()));
        }
        for (Map.Entry<Place, SegmentMounting.Shown> own : shown.entrySet()) {
            Place place = own.getKey();
            List<StrapWatch.Move> moved = moves.getOrDefault(place, List.of());
            timelines.put(place, mounting(place).timeline(moved, own.getValue(), straying));
        }
    }

    private SegmentMounting mounting(Place place) {
        return Objects.requireNonNull(segments.get(place)).mounting();
    }

    private List<StrapWatch.Move> withTurns(Place place, List<StrapWatch.Move> byGravity) {
        Place other = place == Place.PELVIS ? Place.UPPER_BACK : Place.PELVIS;
        Segment beside = segments.get(other);
        List<StrapWatch.Move> turns =
                mounting(place).turns(timeline(place), beside == null ? null : beside.mounting(), timelines.get(other));
        turns.forEach(turn -> findings.add(turned(place, turn)));
        return Stream.concat(byGravity.stream(), turns.stream())
                .sorted(Comparator.comparingDouble(StrapWatch.Move::atS))
                .toList();
    }

    private void judge(Place place, Segment segment) {
        if (segment.mounting().hasCrookedBends(timeline(place).first())) {
            findings.add(ofRoutine(place, WORDS.say("routine.unsteady", place.words())));
        }
        double aside = segment.mounting().asideDeg(Objects.requireNonNull(shown.get(place)));
        if (aside > 0) {
            findings.add(ofRoutine(place, WORDS.say("routine.aside", place.words(), Digits.fixed(aside, 0))));
        }
        gives.put(place, segment.give(timeline(place)));
    }

    private static Finding ofRoutine(Place place, String message) {
        return new Finding(FindingCode.NO_OPENING_ROUTINE, Severity.WARNING, message, place, null);
    }

    private static Finding turned(Place place, StrapWatch.Move turn) {
        return new Finding(
                FindingCode.STRAP_MOVED,
                Severity.WARNING,
                WORDS.say(
                        "strap.turned",
                        place.words(),
                        Digits.fixed(Math.toDegrees(turn.angle()), 0),
                        Digits.fixed(turn.atS(), 0)),
                place,
                turn.atS());
    }

    /** What is told of straps that were turned. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** The mounting at a moment of the sensor's own clock. */
    Mounting at(Place place, double ownS) {
        return timeline(place).at(ownS);
    }

    /** Whether a sensor's strap held over a stretch of its own clock, as far as gravity tells. */
    boolean held(Place place, double fromS, double toS) {
        Segment segment = segments.get(place);
        return segment == null
                || segment.reading().moves().stream().noneMatch(move -> move.toS() > fromS && move.fromS() < toS);
    }

    private MountingTimeline timeline(Place place) {
        MountingTimeline timeline = timelines.get(place);
        if (timeline == null) {
            throw new IllegalStateException("no mounting for the " + place.words());
        }
        return timeline;
    }

    /** How a sensor gives way on its strap. */
    StrapGive give(Place place) {
        return gives.getOrDefault(place, StrapGive.NONE);
    }

    /** The mountings that the opening tells. */
    Map<Place, Mounting> first() {
        Map<Place, Mounting> first = new EnumMap<>(Place.class);
        timelines.forEach((place, timeline) -> first.put(place, timeline.first()));
        return first;
    }
}
