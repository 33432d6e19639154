package evenfall.report.round;

import evenfall.ingest.recording.Recording;
import evenfall.report.demo.RehearsalStory;
import evenfall.report.log.TrainingLog;
import evenfall.report.rehearsal.Pace;
import evenfall.report.speech.Speech;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/**
 * A coach's day: the true round, and beside it one to rehearse, with an invented session instead of sensors and a log of its
 * own. For the front thread.
 */
public final class Day {

    /** A folder that can name no athlete, so that nothing invented slips into real work. */
    private static final String REHEARSAL = ".rehearsal";

    private static final long SEED = 7;

    private final TrainingLog log;
    private final Threads threads;
    private final Surroundings surroundings;
    private final Speech speech;
    private final double speed;
    private final Runnable changed;
    private final Round real;
    private @Nullable Round rehearsal;
    private @Nullable RehearsedSensors rehearsed;
    private boolean preparing;
    private boolean plugged = true;

    /**
     * A day.
     *
     * @param speed rehearsals are so many times as fast as true
     * @param changed told after everything that changed what is to be shown
     */
    public Day(
            TrainingLog log,
            Threads threads,
            Surroundings surroundings,
            Speech speech,
            double speed,
            Runnable changed) {
        this.log = log;
        this.threads = threads;
        this.surroundings = surroundings;
        this.speech = speech;
        this.speed = speed;
        this.changed = changed;
        this.real = round(log);
    }

    /** Begins. */
    public void open() {
        real.open();
    }

    /** The round that is shown. */
    public Round round() {
        Round other = rehearsal;
        return other == null ? real : other;
    }

    /** Whether nothing is real. */
    public boolean rehearsing() {
        return rehearsal != null;
    }

    /** Whether a rehearsal is being prepared. */
    public boolean preparing() {
        return preparing;
    }

    /** Whether the rehearsal's cable is in. */
    public boolean plugged() {
        return plugged;
    }

    /** Begins a rehearsal. */
    public void rehearse() {
        if (rehearsal != null || preparing) {
            return;
        }
        preparing = true;
        changed.run();
        new Errands(threads, real.notices(), changed).fetch(this::prepare, ready -> {
            preparing = false;
            plugged = true;
            Round other = round(ready.log());
            rehearsal = other;
            rehearsed = new RehearsedSensors(ready.story(), () -> Pace.times(speed));
            other.use(rehearsed);
            other.open();
        });
    }

    /** What a rehearsal needs. */
    private record Ready(TrainingLog log, Recording story) {}

    private Ready prepare() throws IOException {
        Path folder = log.folder().resolve(REHEARSAL);
        TrainingLog other = TrainingLog.open(folder);
        Roster roster = new Roster(other, sentence -> {});
        if (other.athletes().isEmpty()) {
            for (String name : RehearsalStory.ATHLETES) {
                roster.add(name, null, null);
            }
        }
        return new Ready(other, RehearsalStory.invent(SEED));
    }

    /** Back to what is real. */
    public void endRehearsal() {
        Round other = rehearsal;
        if (other != null) {
            rehearsal = null;
            rehearsed = null;
            other.close(() -> {});
            changed.run();
        }
    }

    /** Pulls the rehearsal's cable, or puts it in again. */
    public void plug(boolean in) {
        RehearsedSensors sensors = rehearsed;
        if (sensors != null) {
            plugged = in;
            sensors.plugged(in);
            changed.run();
        }
    }

    /** Ends all; {@code after} is run in the front when everything is stored. */
    public void close(Runnable after) {
        Round other = rehearsal;
        if (other == null) {
            real.close(after);
        } else {
            other.close(() -> real.close(after));
        }
    }

    private Round round(TrainingLog kept) {
        return new Round(kept, threads, surroundings, speech, Clock.system(ZoneId.systemDefault()), changed);
    }
}
