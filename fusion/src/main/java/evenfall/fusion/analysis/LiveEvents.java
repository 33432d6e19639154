package evenfall.fusion.analysis;

import evenfall.fusion.event.Event;
import evenfall.fusion.event.EventFinder;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;

/**
 * The events of a stream that grows. The finder looks at the last twenty seconds again and again; older events stay as they
 * were.
 */
final class LiveEvents {

    /** An event this old is told by all that could change it, s. */
    private static final double OPEN_S = 8;

    private static final double KNOWN_BEFORE_S = 4;
    /** A run of steps goes on where the next piece of it begins so soon, s. */
    private static final double SAME_RUN_S = 1;

    /** Heel drops nearer to one another than this are one, s; one this old is seen to its end. */
    private static final double HEEL_DROPS_APART_S = 0.7;
    /** The event after a contact has a contact of its own later than this, s: looks at one event differ by less. */
    private static final double NEXT_AFTER_S = 0.3;

    private final EventFinder finder = new EventFinder();
    private final List<Event> old = new ArrayList<>();
    private List<Event> open = List.of();
    private final List<Double> heelDrops = new ArrayList<>();
    private double openFromS = Double.NEGATIVE_INFINITY;
    private double lookedAtS;

    /** Looks at the stream so far. However much came since the last look, its events are open now. */
    void look(SensorStream stream, OrientationTrack track) {
        double nextFromS = Math.max(openFromS, lookedAtS - OPEN_S);
        List<Event> next = new ArrayList<>();
        for (Event event : finder.find(stream, track, from(stream, track))) {
            if (event.contactS() < openFromS) {
                goOn(event);
            } else if (event.contactS() < nextFromS) {
                old.add(event);
            } else {
                next.add(event);
            }
        }
        open = next;
        openFromS = nextFromS;
        lookedAtS = stream.durationS();
    }

    private int from(SensorStream stream, OrientationTrack track) {
        int from = Math.max(0, stream.indexAtOrBefore(lookedAtS - OPEN_S - EventFinder.MARGIN));
        // What a landing at its start is measured from must still be known.
        int known = track.first() == 0 ? 0 : track.first() + (int) Math.ceil(KNOWN_BEFORE_S * stream.rateHz());
        return Math.max(from, Math.min(known, stream.size() - 1));
    }

    /** Looks for heel drops whose end is seen. */
    void lookForHeelDrops(SensorStream stream, OrientationTrack track) {
        double last = heelDrops.isEmpty() ? Double.NEGATIVE_INFINITY : heelDrops.get(heelDrops.size() - 1);
        for (double at : finder.heelDrops(stream, track, from(stream, track))) {
            if (at > last + HEEL_DROPS_APART_S && at < stream.durationS() - HEEL_DROPS_APART_S) {
                heelDrops.add(at);
                last = at;
            }
        }
    }

    /** Heel drops so far. */
    int heelDrops() {
        return heelDrops.size();
    }

    private void goOn(Event event) {
        Event last = old.isEmpty() ? event : old.get(old.size() - 1);
        boolean same = last.kind() == EventKind.STEPS
                && event.kind() == EventKind.STEPS
                && event.contactS() < last.endS() + SAME_RUN_S;
        if (same && event.endS() > last.endS()) {
            old.set(
                    old.size() - 1,
                    new Event(
                            EventKind.STEPS,
                            Math.max(last.count(), event.count()),
                            last.startS(),
                            last.contactS(),
                            last.peakS(),
                            event.endS()));
        }
    }

    /** The events that may still change, in order. */
    List<Event> open() {
        return open;
    }

    /** How many events came before one of the open ones. */
    int countBefore(Event event) {
        return old.size() + open.indexOf(event);
    }

    /** Where the event before ends, s; 0 if there is none. */
    double endBefore(Event event) {
        int k = open.indexOf(event);
        return k > 0
                ? open.get(k - 1).endS()
                : old.isEmpty() ? 0 : old.get(old.size() - 1).endS();
    }

    /** Where the first event after a moment of contact begins, s; infinite if none is seen. */
    double startAfter(double contactS) {
        return open.stream()
                .filter(event -> event.contactS() > contactS + NEXT_AFTER_S)
                .mapToDouble(Event::startS)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
