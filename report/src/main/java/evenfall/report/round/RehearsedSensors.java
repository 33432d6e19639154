package evenfall.report.round;

import evenfall.ingest.recorder.ReadableWire;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.serial.Link;
import evenfall.report.rehearsal.Pace;
import evenfall.report.rehearsal.Playback;
import evenfall.report.rehearsal.RehearsalBench;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Sensors that are not there: an invented session is played to each turn from its beginning. */
public final class RehearsedSensors implements Sensors {

    private final Recording story;
    private final Supplier<Pace> pace;
    private @Nullable RehearsalBench bench;
    private @Nullable Link link;

    /**
     * Sensors that say what a recording holds.
     *
     * @param pace begins to count a turn's time
     */
    public RehearsedSensors(Recording story, Supplier<Pace> pace) {
        this.story = story;
        this.pace = pace;
    }

    @Override
    public List<Link> begin() {
        rest();
        RehearsalBench played = new RehearsalBench(new Playback(story), pace);
        Link opened = Link.open(played, RehearsalBench.PATH, OptionalInt.empty(), ReadableWire::new);
        bench = played;
        link = opened;
        return List.of(opened);
    }

    /** Pulls the cable, or puts it in again. */
    public void plugged(boolean in) {
        RehearsalBench played = bench;
        if (played != null && in) {
            played.plug();
        } else if (played != null) {
            played.unplug();
        }
    }

    @Override
    public void rest() {
        Link open = link;
        if (open != null) {
            open.close();
        }
    }

    @Override
    public void close() {
        rest();
    }
}
