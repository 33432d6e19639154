package evenfall.ingest.recording;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * The true interval between samples, found from time stamps that jitter, are rounded, or have gaps.
 *
 * <p>A clock that counts finely against the interval gives the mean of those intervals that lie near the median: gaps
 * and lost samples fall away. A clock that counts coarsely (whole milliseconds at 800 Hz read 1, 1, 1, 2 ms) makes
 * single intervals worthless; there the median over blocks of {@value #BLOCK} intervals is taken.
 */
final class SampleInterval {

    private static final int BLOCK = 64;
    private static final int MOST_BLOCKS = 1024;

    /** Intervals within this share of the median count as ordinary. */
    private static final double NEAR = 0.4;

    /** A clock step above this share of the interval is coarse. */
    private static final double COARSE = 0.1;

    /** Clock steps below this are the rounding of numbers, not of clocks, s. */
    private static final double FINEST_STEP = 1e-6;

    private SampleInterval() {}

    /** The interval in s; 0 for a single sample or a time that never moves. */
    static double of(double[] time) {
        return of(time.length, i -> time[i]);
    }

    /** The interval in s between {@code size} samples at {@code time}; 0 for one or for a time that never moves. */
    static double of(int size, IntToDoubleFunction time) {
        int intervals = size - 1;
        if (intervals < 1) {
            return 0;
        }
        int block = Math.min(BLOCK, intervals);
        int blocks = Math.min(MOST_BLOCKS, intervals / block);
        double[] steps = new double[blocks * block];
        double[] means = new double[blocks];
        for (int b = 0; b < blocks; b++) {
            int start = blocks == 1 ? 0 : (int) ((long) b * (intervals - block) / (blocks - 1));
            for (int i = 0; i < block; i++) {
                steps[b * block + i] = time.applyAsDouble(start + i + 1) - time.applyAsDouble(start + i);
            }
            means[b] = (time.applyAsDouble(start + block) - time.applyAsDouble(start)) / block;
        }
        Arrays.sort(steps);
        Arrays.sort(means);
        double median = steps[steps.length / 2];
        return counted(steps, means, block) ? means[blocks / 2] : meanNear(steps, median);
    }

    /**
     * Whether the clock counts so coarsely that single intervals say little. Steps as large as the interval itself are
     * lost samples unless the blocks are as even as counting makes them.
     */
    private static boolean counted(double[] sortedSteps, double[] sortedMeans, int block) {
        double median = sortedSteps[sortedSteps.length / 2];
        double step = clockStep(sortedSteps);
        if (step <= COARSE * median || step == Double.POSITIVE_INFINITY) {
            return false;
        }
        double spread = sortedMeans[(int) (0.9 * sortedMeans.length)] - sortedMeans[(int) (0.1 * sortedMeans.length)];
        return step <= NEAR * median || median == 0 || spread <= 1.2 * step / block;
    }

    private static double clockStep(double[] sorted) {
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            double difference = sorted[i] - sorted[i - 1];
            if (difference > FINEST_STEP) {
                smallest = Math.min(smallest, difference);
            }
        }
        return smallest;
    }

    private static double meanNear(double[] steps, double median) {
        double sum = 0;
        int count = 0;
        for (double step : steps) {
            if (Math.abs(step - median) <= NEAR * median) {
                sum += step;
                count++;
            }
        }
        return count == 0 ? median : sum / count;
    }
}
