package evenfall.fusion.event;

import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.recording.SensorStream;
import java.util.List;

/** Finds landings, runs of steps and falls in the pelvis's stream. */
public final class EventFinder {

    /**
     * All events in order of contact.
     *
     * @param pelvis the pelvis's samples
     * @param orientation world from sensor at each of them
     */
    public List<Event> find(SensorStream pelvis, OrientationTrack orientation) {
        if (pelvis.size() != orientation.size()) {
            throw new IllegalArgumentException(
                    "orientation of " + orientation.size() + " samples for a stream of " + pelvis.size());
        }
        return List.of();
    }
}
