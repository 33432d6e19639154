package evenfall.ingest.wire;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds out which of several sensors a person taps with a finger, so that sensors need not know their places: three taps
 * on one of them within {@value TapCount#WITHIN_S} s, while the others are heard and are still.
 *
 * <p>Sensors' clocks are not compared: what the others did meanwhile is told by what arrived meanwhile. Steps, jumps and
 * drops shake all sensors of a body, so they give no answer. Not safe for use from several threads.
 */
public final class TapWatch implements WireReceiver {

    private final List<TapCount> counts = new ArrayList<>();
    private long arrived;

    /** What is known so far. */
    public enum Verdict {
        /** Nobody tapped three times. */
        NONE,
        /** One sensor was tapped, the others were still. */
        TAPPED,
        /** One was tapped, but another moved too: ask again, with the person standing still. */
        OTHERS_MOVED,
        /** One was tapped, but another is not heard, or there is no other: it may be the wrong one. */
        OTHERS_SILENT
    }

    /**
     * An answer, or why there is none yet.
     *
     * @param verdict what is known
     * @param sensor number of the sensor the taps were on; -1 for {@link Verdict#NONE}
     */
    public record Answer(Verdict verdict, int sensor) {}

    @Override
    public void sample(int sensor, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
        TapCount count = count(sensor);
        if (count != null) {
            count.add(++arrived, timeS, ax, ay, az);
        }
    }

    /** What the last seconds say; an answer holds until a second after the last tap. */
    public Answer answer() {
        for (TapCount count : counts) {
            if (count.tapped()) {
                return new Answer(verdict(count), count.sensor());
            }
        }
        return new Answer(Verdict.NONE, -1);
    }

    private Verdict verdict(TapCount tapped) {
        Verdict verdict = counts.size() > 1 ? Verdict.TAPPED : Verdict.OTHERS_SILENT;
        for (TapCount other : counts) {
            if (other != tapped && other.lastArrival() < tapped.lastTapArrival()) {
                return Verdict.OTHERS_SILENT;
            }
            if (other != tapped && other.movedLately()) {
                verdict = Verdict.OTHERS_MOVED;
            }
        }
        return verdict;
    }

    private @Nullable TapCount count(int sensor) {
        for (int i = 0; i < counts.size(); i++) {
            if (counts.get(i).sensor() == sensor) {
                return counts.get(i);
            }
        }
        if (counts.size() == WireStreams.MOST_SENSORS) {
            return null;
        }
        TapCount count = new TapCount(sensor);
        counts.add(count);
        return count;
    }
}
