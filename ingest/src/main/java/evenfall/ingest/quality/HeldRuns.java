package evenfall.ingest.quality;

import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;

/**
 * The stretches in which an axis holds exactly one value for longer than an honest axis would.
 *
 * <p>Quantisation makes honest axes hold a value for some samples at rest, so a run counts only when it is far longer
 * than this axis's ordinary runs, or when the body moved meanwhile.
 */
final class HeldRuns {

    /** A shorter run says nothing. */
    static final double SHORTEST_S = 0.5;

    private static final int FEWEST_SAMPLES = 20;

    /** So many times the ordinary longest run cannot be quantisation. */
    private static final int FAR_LONGER = 10;

    private static final int LONGER = 3;
    private static final int HISTOGRAM = 4096;

    /** So many samples are read at a time. */
    private static final int BLOCK = 4096;

    /** Of all runs, so many are ordinary. */
    private static final double ORDINARY = 0.999;

    /** The body moves when another axis swings this far, m/s² and rad/s, over at least so many different samples. */
    private static final double SWING_ACCELERATION = 1;

    private static final double SWING_TURN_RATE = 0.35;
    private static final int SWING_CHANGES = 20;

    private HeldRuns() {}

    /** Suspicious runs of {@code axis} in order. */
    static List<Span> of(SensorStream stream, Axis axis) {
        int shortest = shortest(stream);
        long[] histogram = new long[HISTOGRAM];
        List<Span> candidates = new ArrayList<>();
        float[] block = new float[BLOCK];
        int start = 0;
        float before = (float) axis.value(stream, 0);
        for (int from = 0; from < stream.size(); from += BLOCK) {
            int count = stream.readAxis(axis.column(), from, block);
            for (int i = 0; i < count; i++) {
                if (block[i] != before) {
                    before = block[i];
                    close(start, from + i, shortest, histogram, candidates);
                    start = from + i;
                }
            }
        }
        close(start, stream.size(), shortest, histogram, candidates);
        int ordinary = ordinary(histogram);
        candidates.removeIf(run -> !suspicious(stream, axis, run, ordinary));
        return candidates;
    }

    private static void close(int start, int end, int shortest, long[] histogram, List<Span> candidates) {
        int length = end - start;
        histogram[Math.min(length, HISTOGRAM - 1)]++;
        if (length >= shortest) {
            candidates.add(new Span(start, end - 1));
        }
    }

    /** Fewest samples of a run that could tell something. */
    static int shortest(SensorStream stream) {
        return (int) Math.max(FEWEST_SAMPLES, Math.round(SHORTEST_S * stream.rateHz()));
    }

    private static int ordinary(long[] histogram) {
        long runs = 0;
        for (long count : histogram) {
            runs += count;
        }
        if (runs < 2) {
            return 1;
        }
        long below = 0;
        int length = 0;
        while (length < HISTOGRAM - 1 && below < ORDINARY * (runs - 1)) {
            below += histogram[++length];
        }
        return Math.max(1, length);
    }

    private static boolean suspicious(SensorStream stream, Axis axis, Span run, int ordinary) {
        if (run.length() > stream.size() / 2) {
            return true;
        }
        if (run.length() >= LONGER * ordinary && bodyMoves(stream, axis, run)) {
            return true;
        }
        // Some gyroscopes are silenced to exactly nothing at rest; that is how they are made, and harmless.
        boolean silenced = Axis.GYROSCOPE.contains(axis) && axis.value(stream, run.from()) == 0;
        return !silenced && run.length() >= FAR_LONGER * ordinary;
    }

    private static boolean bodyMoves(SensorStream stream, Axis held, Span run) {
        for (Axis axis : Axis.values()) {
            if (axis == held) {
                continue;
            }
            double low = axis.value(stream, run.from());
            double high = low;
            int changes = 0;
            for (int i = run.from() + 1; i <= run.to(); i++) {
                double value = axis.value(stream, i);
                low = Math.min(low, value);
                high = Math.max(high, value);
                changes += value == axis.value(stream, i - 1) ? 0 : 1;
            }
            double swing = Axis.ACCELEROMETER.contains(axis) ? SWING_ACCELERATION : SWING_TURN_RATE;
            if (high - low > swing && changes >= SWING_CHANGES) {
                return true;
            }
        }
        return false;
    }
}
