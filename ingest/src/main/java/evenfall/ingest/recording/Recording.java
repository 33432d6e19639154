package evenfall.ingest.recording;

import evenfall.ingest.place.Place;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One session's samples: the pelvis sensor and, if it was worn, the upper-back sensor, each on its own clock.
 *
 * @param pelvis what the sacrum sensor recorded
 * @param upperBack what the sensor between the shoulder blades recorded, or null if none was worn
 */
public record Recording(SensorRecording pelvis, @Nullable SensorRecording upperBack) {

    /** The places that carry a sensor. */
    public Set<Place> places() {
        return upperBack == null ? EnumSet.of(Place.PELVIS) : EnumSet.allOf(Place.class);
    }
}
