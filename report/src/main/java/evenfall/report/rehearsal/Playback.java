package evenfall.report.rehearsal;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.wire.SensorId;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * A recording as the bytes its sensors would send: both begin at once, each stamps by its own clock, samples go out in
 * order of time, and in the binary form each says hello first and then every second. Not safe for use from several
 * threads.
 */
public final class Playback {

    /** Numbers of sensors that do not know where they are. */
    public static final int UNPLACED_PELVIS = 0x0101;

    public static final int UNPLACED_UPPER_BACK = 0x0202;

    private final List<Track> tracks = new ArrayList<>();
    private final FaultyLine line;

    /** Plays {@code recording} from its beginning as text, and all goes well. */
    public Playback(Recording recording) {
        this(recording, WireForm.TEXT, Faults.NONE);
    }

    /** Plays {@code recording} from its beginning; unplugging is left to who owns the port. */
    public Playback(Recording recording, WireForm form, Faults faults) {
        this.line = new FaultyLine(faults);
        add(Place.PELVIS, recording.pelvis(), form);
        SensorRecording other = recording.upperBack();
        if (other != null) {
            add(Place.UPPER_BACK, other, form);
        }
    }

    private void add(Place place, SensorRecording recording, WireForm form) {
        SensorStream stream = recording.stream();
        Voice voice = switch (form) {
            case TEXT -> new TextVoice(place, stream);
            case BINARY -> new FrameVoice(SensorId.at(place), place, stream);
            case BINARY_UNPLACED ->
                new FrameVoice(place == Place.PELVIS ? UNPLACED_PELVIS : UNPLACED_UPPER_BACK, null, stream);
        };
        tracks.add(new Track(stream, voice));
    }

    /** Whether all was sent. */
    public boolean ended() {
        return tracks.stream().allMatch(Track::ended);
    }

    /** How long it takes at true speed, s. */
    public double durationS() {
        return tracks.stream()
                .mapToDouble(track -> track.stream.durationS())
                .max()
                .orElse(0);
    }

    /** Samples in all. */
    public int size() {
        return tracks.stream().mapToInt(track -> track.stream.size()).sum();
    }

    /** Lines or frames that were lost on request so far. */
    public long lost() {
        return line.lost();
    }

    /** Lines or frames that were damaged on request so far. */
    public long damaged() {
        return line.damaged();
    }

    /**
     * The bytes of the samples that are due and were not given yet, but no more than {@code most} of them.
     *
     * @param untilS time since the beginning, s
     */
    public byte[] due(double untilS, int most) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < most; i++) {
            Track next = tracks.get(0);
            for (Track track : tracks) {
                next = track.dueS() < next.dueS() ? track : next;
            }
            double dueS = next.dueS();
            if (dueS > untilS || next.ended()) {
                break;
            }
            byte[] said = next.helloIsDue() ? next.hello() : next.take();
            if (said.length > 0) {
                bytes.writeBytes(line.pass(said, dueS));
            }
        }
        return bytes.toByteArray();
    }

    private static final class Track {

        private static final double HELLO_S = 1;

        private final SensorStream stream;
        private final Voice voice;
        private double nextHelloS;
        private int at;

        Track(SensorStream stream, Voice voice) {
            this.stream = stream;
            this.voice = voice;
        }

        boolean ended() {
            return at >= stream.size();
        }

        double dueS() {
            return ended() ? Double.POSITIVE_INFINITY : Math.min(stream.time(at), nextHelloS);
        }

        boolean helloIsDue() {
            return nextHelloS <= stream.time(at);
        }

        byte[] hello() {
            double nowS = nextHelloS;
            nextHelloS += HELLO_S;
            return voice.hello(nowS);
        }

        byte[] take() {
            return voice.sample(at++);
        }
    }
}
