package evenfall.fusion.event;

import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds landings, runs of steps and falls in the pelvis's stream.
 *
 * <p>A landing is lightness or flight, then a brake that stops the downward speed, then an upright body; the method's
 * chapter on finding landings says how that is told from the rest. The stream is worked through in stretches, so that
 * memory does not grow with its length.
 */
public final class EventFinder {

    /** Length of a stretch, s. */
    private static final double STRETCH = 120;

    /** What is looked at around a stretch, s: the level, the nearest rests and a whole landing. */
    public static final double MARGIN = 12;

    /** A gap up to this long is bridged by a straight line of force, s; the feet can do little meanwhile. */
    private static final double BRIDGED_GAP = 0.25;

    /** Fewer samples than this hold no speed that turns. */
    private static final int LEAST_SAMPLES = 3;

    private final EventParams params = EventParams.DEFAULT;

    /**
     * All events in order of contact.
     *
     * @param pelvis the pelvis's samples
     * @param orientation world from sensor at each of them
     * @throws IllegalArgumentException if there is not one orientation a sample
     */
    public List<Event> find(SensorStream pelvis, OrientationTrack orientation) {
        return all(pelvis, orientation).events();
    }

    /**
     * All events and heel drops.
     *
     * @param pelvis the pelvis's samples
     * @param orientation world from sensor at each of them
     * @throws IllegalArgumentException if there is not one orientation a sample
     */
    public Found all(SensorStream pelvis, OrientationTrack orientation) {
        if (pelvis.size() != orientation.size()) {
            throw new IllegalArgumentException(
                    "orientation of " + orientation.size() + " samples for a stream of " + pelvis.size());
        }
        List<Descent> descents = descents(pelvis, orientation, 0);
        List<Verdict> verdicts = new LandingRules(params, descents).verdicts();
        return new Found(events(descents, verdicts), HeelDrops.find(descents, verdicts));
    }

    /**
     * The events in the samples from {@code from} on, as far as they and what comes after them tell.
     *
     * @param pelvis the pelvis's samples
     * @param orientation world from sensor at each of those samples
     * @param from some {@value #MARGIN} s before what is asked for
     */
    public List<Event> find(SensorStream pelvis, OrientationTrack orientation, int from) {
        List<Descent> descents = descents(pelvis, orientation, from);
        return events(descents, new LandingRules(params, descents).verdicts());
    }

    private List<Event> events(List<Descent> descents, List<Verdict> verdicts) {
        List<Event> events = new ArrayList<>();
        for (int i = 0; i < descents.size(); i++) {
            if (verdicts.get(i) == Verdict.LANDING) {
                Descent d = descents.get(i);
                events.add(new Event(EventKind.LANDING, 1, d.takeoff(), d.contact(), d.peak(), d.braked()));
            }
        }
        FallRules falls = new FallRules(params.fall());
        events.addAll(falls.find(descents, verdicts));
        events.addAll(new StepRuns(params.steps(), falls).find(descents, verdicts));
        events.sort(Comparator.comparingDouble(Event::contactS));
        return List.copyOf(events);
    }

    /** Moments of the heel drops in the samples from {@code from} on, s, in order. */
    public List<Double> heelDrops(SensorStream pelvis, OrientationTrack orientation, int from) {
        List<Descent> descents = descents(pelvis, orientation, from);
        return HeelDrops.find(descents, new LandingRules(params, descents).verdicts());
    }

    /** All descents of the stream in order. */
    static List<Descent> descents(SensorStream pelvis, OrientationTrack orientation) {
        return descents(pelvis, orientation, 0);
    }

    private static List<Descent> descents(SensorStream pelvis, OrientationTrack orientation, int from) {
        List<Descent> found = new ArrayList<>();
        int pieceStart = from;
        for (int i = from + 1; i <= pelvis.size(); i++) {
            if (i == pelvis.size() || pelvis.time(i) - pelvis.time(i - 1) > BRIDGED_GAP) {
                addPiece(pelvis, orientation, pieceStart, i, found);
                pieceStart = i;
            }
        }
        return found;
    }

    private static void addPiece(
            SensorStream pelvis, OrientationTrack orientation, int from, int to, List<Descent> found) {
        int stretch = (int) Math.max(1, Math.round(STRETCH * pelvis.rateHz()));
        int margin = (int) Math.round(MARGIN * pelvis.rateHz());
        for (int core = from; core < to; core += stretch) {
            int end = Math.min(to, core + stretch);
            int first = Math.max(from, core - margin);
            int last = Math.min(to, end + margin);
            if (last - first < LEAST_SAMPLES) {
                continue;
            }
            double begins = pelvis.time(core);
            double ends = end < to ? pelvis.time(end) : Double.POSITIVE_INFINITY;
            for (Descent d : new DescentFinder(new VerticalMotion(pelvis, orientation, first, last)).find()) {
                if (d.turn() >= begins && d.turn() < ends) {
                    found.add(d);
                }
            }
        }
    }

    /**
     * What a whole stream holds.
     *
     * @param events in order of contact
     * @param heelDropsS moments of the heel drops in order, s: the heels strike
     */
    public record Found(List<Event> events, List<Double> heelDropsS) {

        public Found {
            events = List.copyOf(events);
            heelDropsS = List.copyOf(heelDropsS);
        }
    }
}
