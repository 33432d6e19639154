package evenfall.fusion.analysis;

import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.alignment.StrapGive;
import evenfall.fusion.alignment.StrapGiveFinder;
import evenfall.fusion.alignment.StrapWatch;
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

        private MountingTimeline byGravity() {
            return mounting.timeline(reading.moves());
        }

        private StrapGive give(MountingTimeline timeline) {
            StrapGiveFinder finder = new StrapGiveFinder(reading.stream());
            for (double contact : contactS) {
                finder.add(contact, timeline.at(contact).segmentFromSensor());
            }
            return finder.solve();
        }
    }

    private final Map<Place, MountingTimeline> timelines = new EnumMap<>(Place.class);
    private final Map<Place, StrapGive> gives = new EnumMap<>(Place.class);
    private final List<Finding> findings = new ArrayList<>();

    BodyMounting(Segment pelvis, @Nullable Segment upperBack) {
        MountingTimeline lower = pelvis.byGravity();
        MountingTimeline upper = upperBack == null ? null : upperBack.byGravity();
        SegmentMounting other = upperBack == null ? null : upperBack.mounting();
        mount(Place.PELVIS, pelvis, lower, pelvis.mounting().turns(lower, other, upper));
        if (upperBack != null && upper != null) {
            mount(Place.UPPER_BACK, upperBack, upper, upperBack.mounting().turns(upper, pelvis.mounting(), lower));
        }
    }

    private void mount(Place place, Segment segment, MountingTimeline byGravity, List<StrapWatch.Move> turns) {
        MountingTimeline timeline = byGravity;
        if (!turns.isEmpty()) {
            List<StrapWatch.Move> moves = new ArrayList<>(segment.reading().moves());
            moves.addAll(turns);
            moves.sort(Comparator.comparingDouble(StrapWatch.Move::atS));
            timeline = segment.mounting().timeline(moves);
            turns.forEach(turn -> findings.add(turned(place, turn)));
        }
        if (segment.mounting().hasCrookedBends(timeline.first())) {
            findings.add(new Finding(
                    FindingCode.NO_OPENING_ROUTINE,
                    Severity.WARNING,
                    WORDS.say("routine.unsteady", place.words()),
                    place,
                    null));
        }
        timelines.put(place, timeline);
        gives.put(place, segment.give(timeline));
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
