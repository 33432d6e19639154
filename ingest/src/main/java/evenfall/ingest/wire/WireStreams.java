package evenfall.ingest.wire;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Collects the samples of all sensors as they come from the wire into a recording. A sensor whose place is not known yet
 * is collected too and joins the recording, from its beginning, when it is {@link #place placed}. Not safe for use from
 * several threads.
 *
 * <p>A sample whose time lies before that of the one before it is left out. When a sensor's clock jumps back by more
 * than 1 s the sensor has started anew: its time goes on from where it was, and a finding says so.
 */
public final class WireStreams implements WireReceiver {

    /** Further sensors are not listened to: nobody wears so many. */
    public static final int MOST_SENSORS = 16;

    private final List<SensorTrack> tracks = new ArrayList<>();
    private final TapWatch taps = new TapWatch();

    @Override
    public void sample(int sensor, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
        SensorTrack track = track(sensor);
        if (track == null || !track.add(timeS, ax, ay, az, gx, gy, gz)) {
            return;
        }
        if (track.place() == null) {
            taps.sample(sensor, track.lastS(), ax, ay, az, gx, gy, gz);
        }
    }

    @Override
    public void hello(Hello hello) {
        SensorTrack track = track(hello.sensor());
        if (track == null) {
            return;
        }
        track.hello(hello);
        Place place = hello.place();
        if (place != null && track.place() == null && at(place) == null) {
            place(hello.sensor(), place);
        }
    }

    @Override
    public void lost(int sensor, long samples) {
        SensorTrack track = track(sensor);
        if (track != null) {
            track.lost(samples);
        }
    }

    /** Samples of {@code place} so far. */
    public int size(Place place) {
        SensorTrack track = at(place);
        return track == null ? 0 : track.size();
    }

    /** Numbers of the sensors that have sent samples and whose place is not known, in the order they were first heard. */
    public List<Integer> unplaced() {
        return tracks.stream()
                .filter(track -> track.place() == null && track.size() > 0)
                .map(SensorTrack::sensor)
                .toList();
    }

    /** Which of the sensors whose place is not known was tapped just now, if that can be told. */
    public TapWatch.Answer tapped() {
        return taps.answer();
    }

    /** Where a sensor is, if that is known. */
    public @Nullable Place placeOf(int sensor) {
        for (SensorTrack track : tracks) {
            if (track.sensor() == sensor) {
                return track.place();
            }
        }
        return null;
    }

    /**
     * Places a sensor whose place follows from what is known: one that is left beside a placed one is at the other place,
     * and one that is alone is the pelvis sensor. Only for when all has come.
     */
    public void placeByElimination() {
        List<Integer> unplaced = unplaced();
        boolean pelvis = size(Place.PELVIS) > 0;
        if (unplaced.size() == 1 && !(pelvis && size(Place.UPPER_BACK) > 0)) {
            place(unplaced.get(0), pelvis ? Place.UPPER_BACK : Place.PELVIS);
        }
    }

    /** Says where a sensor is. Another sensor that was there has no place from now on. */
    public void place(int sensor, Place place) {
        SensorTrack before = at(place);
        SensorTrack track = track(sensor);
        if (track == null || track == before) {
            return;
        }
        if (before != null) {
            before.place(null);
        }
        track.place(place);
    }

    /**
     * What was collected so far, or empty while the pelvis has not spoken.
     *
     * @param source where it came from, as a person would name it
     */
    public Optional<Recording> recording(String source) {
        SensorRecording pelvis = recording(Place.PELVIS, source);
        return pelvis == null
                ? Optional.empty()
                : Optional.of(new Recording(pelvis, recording(Place.UPPER_BACK, source)));
    }

    private @Nullable SensorRecording recording(Place place, String source) {
        SensorTrack track = at(place);
        return track == null || track.size() == 0 ? null : track.recording(source);
    }

    /**
     * The same for asking again and again while samples come: made in a time that does not grow with their number. It shares
     * the samples and copies none.
     *
     * @param source where it came from, as a person would name it
     */
    public Optional<Recording> soFar(String source) {
        SensorRecording pelvis = soFar(Place.PELVIS, source);
        return pelvis == null ? Optional.empty() : Optional.of(new Recording(pelvis, soFar(Place.UPPER_BACK, source)));
    }

    private @Nullable SensorRecording soFar(Place place, String source) {
        SensorTrack track = at(place);
        return track == null || track.size() == 0 ? null : track.soFar(source);
    }

    private @Nullable SensorTrack at(Place place) {
        for (SensorTrack track : tracks) {
            if (track.place() == place) {
                return track;
            }
        }
        return null;
    }

    private @Nullable SensorTrack track(int sensor) {
        for (int i = 0; i < tracks.size(); i++) {
            if (tracks.get(i).sensor() == sensor) {
                return tracks.get(i);
            }
        }
        if (tracks.size() == MOST_SENSORS) {
            return null;
        }
        SensorTrack track = new SensorTrack(sensor);
        tracks.add(track);
        return track;
    }
}
