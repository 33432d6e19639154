package evenfall.fusion.analysis;

import evenfall.ingest.recording.Gap;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Single samples that are missing: too little to be a gap of the stream, yet an impact between two samples may hide in each as in
 * a gap.
 */
final class SingleLosses {

    /** Stamps are clear where half of the steps are off the interval by less than this part of it. */
    private static final double CLEAR = 0.1;

    private SingleLosses() {}

    /**
     * The steps from one sample to another in which one is missing.
     *
     * @param from index of the first sample
     * @param to after the last
     */
    static List<Gap> between(SensorStream stream, int from, int to) {
        List<Gap> losses = new ArrayList<>();
        if (to - from < 2) {
            return losses;
        }
        double interval = 1 / stream.rateHz();
        double[] off = new double[to - from - 1];
        for (int i = from + 1; i < to; i++) {
            double step = stream.time(i) - stream.time(i - 1);
            off[i - from - 1] = Math.abs(step - interval);
            if (step > SensorStream.LOST_INTERVALS * interval && step <= SensorStream.GAP_INTERVALS * interval) {
                losses.add(new Gap(i - 1, stream.time(i - 1), stream.time(i)));
            }
        }
        return losses.isEmpty() || StatUtils.percentile(off, 50) > CLEAR * interval ? List.of() : losses;
    }
}
