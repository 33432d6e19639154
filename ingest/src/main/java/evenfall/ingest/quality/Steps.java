package evenfall.ingest.quality;

import evenfall.ingest.recording.SensorStream;
import java.util.Arrays;

/**
 * The steps of a stream's clock from sample to sample, gone over once. Steps within half an interval of the usual one
 * are ordinary; gaps and lost samples are not.
 *
 * @param scatterS root mean square distance of the ordinary steps from the usual one, s
 * @param middlingS the same by the median distance of all steps, which those far off the usual do not escape, s; as for
 *     a normal distribution
 * @param worstAtS the sample whose ordinary step is farthest off the usual one, s
 * @param repeated samples that carry the time of the one before
 * @param firstRepeatedS the first of them, s; 0 if there is none
 * @param lost steps in which a single sample seems lost: longer than ordinary, and no gap
 * @param firstLostS where the first of them begins, s; NaN if there is none
 */
record Steps(
        double scatterS,
        double middlingS,
        double worstAtS,
        int repeated,
        double firstRepeatedS,
        int lost,
        double firstLostS) {

    private static final int BLOCK = 4096;

    /** So many steps tell their median. */
    private static final int MOST_SORTED = 100_000;

    /** Goes over a stream; one of fewer than two samples, or without a rate, has no steps to tell of. */
    static Steps of(SensorStream stream) {
        double interval = stream.rateHz() > 0 ? 1 / stream.rateHz() : 0;
        double[] times = new double[BLOCK];
        double squares = 0;
        int ordinary = 0;
        double worst = 0;
        double worstAt = 0;
        int repeated = 0;
        double firstRepeated = 0;
        int lost = 0;
        double firstLost = Double.NaN;
        // Blocks share a sample, so that every step lies in one.
        for (int from = 0; from + 1 < stream.size(); from += BLOCK - 1) {
            int count = stream.readTimes(from, times);
            for (int i = 1; i < count; i++) {
                double step = times[i] - times[i - 1];
                double off = Math.abs(step - interval);
                if (off < 0.5 * interval) {
                    squares += off * off;
                    ordinary++;
                    if (off > worst) {
                        worst = off;
                        worstAt = times[i];
                    }
                } else if (step == 0) {
                    firstRepeated = repeated++ == 0 ? times[i] : firstRepeated;
                } else if (step > SensorStream.LOST_INTERVALS * interval
                        && step <= SensorStream.GAP_INTERVALS * interval) {
                    firstLost = lost++ == 0 ? times[i - 1] : firstLost;
                }
            }
        }
        double scatter = Math.sqrt(squares / Math.max(1, ordinary));
        return new Steps(scatter, middling(stream, interval), worstAt, repeated, firstRepeated, lost, firstLost);
    }

    private static double middling(SensorStream stream, double interval) {
        if (stream.size() < 2) {
            return 0;
        }
        int stride = Math.max(1, stream.size() / MOST_SORTED);
        double[] off = new double[(stream.size() - 2) / stride + 1];
        double[] pair = new double[2];
        for (int k = 0; k < off.length; k++) {
            stream.readTimes(k * stride, pair);
            off[k] = Math.abs(pair[1] - pair[0] - interval);
        }
        Arrays.sort(off);
        return 1.4826 * off[off.length / 2];
    }
}
