package evenfall.report.live;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.wire.LineWriter;
import java.io.ByteArrayOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * A recording as the bytes its sensors would send: both begin at once, each stamps by its own clock, samples go out in
 * order of time. Not safe for use from several threads.
 */
public final class Playback {

    private final Track pelvis;
    private final @Nullable Track upperBack;

    /** Plays {@code recording} from its beginning. */
    public Playback(Recording recording) {
        this.pelvis = new Track(Place.PELVIS, recording.pelvis());
        SensorRecording other = recording.upperBack();
        this.upperBack = other == null ? null : new Track(Place.UPPER_BACK, other);
    }

    /** Whether all was sent. */
    public boolean ended() {
        return pelvis.ended() && (upperBack == null || upperBack.ended());
    }

    /** Samples in all. */
    public int size() {
        return pelvis.stream.size() + (upperBack == null ? 0 : upperBack.stream.size());
    }

    /**
     * The lines of the samples that are due and were not given yet, but no more than {@code most} of them.
     *
     * @param untilS time since the beginning, s
     */
    public byte[] due(double untilS, int most) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < most; i++) {
            Track next = upperBack != null && upperBack.dueS() < pelvis.dueS() ? upperBack : pelvis;
            if (next.dueS() > untilS) {
                break;
            }
            bytes.writeBytes(next.take());
        }
        return bytes.toByteArray();
    }

    private static final class Track {

        private final Place place;
        private final SensorStream stream;
        private int at;

        Track(Place place, SensorRecording recording) {
            this.place = place;
            this.stream = recording.stream();
        }

        boolean ended() {
            return at >= stream.size();
        }

        double dueS() {
            return ended() ? Double.POSITIVE_INFINITY : stream.time(at);
        }

        byte[] take() {
            int i = at++;
            // The wire knows no time before zero.
            double start = Math.max(0, stream.clockStartS());
            return LineWriter.line(
                    place,
                    start + stream.time(i),
                    stream.ax(i),
                    stream.ay(i),
                    stream.az(i),
                    stream.gx(i),
                    stream.gy(i),
                    stream.gz(i));
        }
    }
}
