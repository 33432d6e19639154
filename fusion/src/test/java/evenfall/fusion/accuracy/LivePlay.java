package evenfall.fusion.accuracy;

import evenfall.fusion.analysis.LiveAnalyser;
import evenfall.fusion.analysis.LiveNews;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingMeasurer;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Plays a recording to a live analyser, in blocks of samples, both sensors' first samples at once. */
public final class LivePlay {

    /**
     * A landing as it was told.
     *
     * @param toldS when, s on the pelvis's clock
     */
    public record Told(Landing landing, double toldS) {}

    private final List<Told> landings = new ArrayList<>();
    private final List<Double> falls = new ArrayList<>();

    private LivePlay() {}

    /** Plays the whole of {@code recording} in blocks of {@code blockS} s. */
    public static LivePlay of(Recording recording, double blockS) {
        LivePlay play = new LivePlay();
        LiveAnalyser analyser = new LiveAnalyser();
        Track pelvis = new Track(recording.pelvis());
        SensorRecording worn = recording.upperBack();
        Track upperBack = worn == null ? null : new Track(worn);
        double end = recording.pelvis().stream().durationS();
        for (double now = 0; now < end + blockS; now += blockS) {
            play.take(analyser.advance(soFar(pelvis, upperBack, now)), now);
        }
        play.take(analyser.end(soFar(pelvis, upperBack, end + 1000)), end);
        return play;
    }

    /** What of a recording has come by a moment. */
    public static Recording until(Recording recording, double timeS) {
        SensorRecording worn = recording.upperBack();
        return soFar(new Track(recording.pelvis()), worn == null ? null : new Track(worn), timeS);
    }

    private static Recording soFar(Track pelvis, @Nullable Track upperBack, double now) {
        return new Recording(pelvis.until(now), upperBack == null ? null : upperBack.until(now));
    }

    private void take(LiveNews news, double now) {
        for (LandingMeasurer.Measured measured : news.landings()) {
            landings.add(new Told(measured.landing(), now));
        }
        falls.addAll(news.falls());
    }

    /** The landings in the order they were told. */
    public List<Told> landings() {
        return landings;
    }

    /** Contacts of the falls told. */
    public List<Double> falls() {
        return falls;
    }

    /** One sensor's samples, added as they come. */
    private static final class Track {

        private final SensorRecording recording;
        private final SensorStream stream;
        private final SensorStream.Builder builder = new SensorStream.Builder();

        Track(SensorRecording recording) {
            this.recording = recording;
            this.stream = recording.stream();
        }

        SensorRecording until(double timeS) {
            while (builder.size() < stream.size() && (builder.size() == 0 || stream.time(builder.size()) <= timeS)) {
                int i = builder.size();
                builder.add(
                        stream.clockStartS() + stream.time(i),
                        stream.ax(i),
                        stream.ay(i),
                        stream.az(i),
                        stream.gx(i),
                        stream.gy(i),
                        stream.gz(i));
            }
            return new SensorRecording(recording.source(), builder.soFar(), recording.axes(), List.of());
        }
    }
}
