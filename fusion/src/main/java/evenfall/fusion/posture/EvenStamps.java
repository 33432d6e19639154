package evenfall.fusion.posture;

import evenfall.fusion.orientation.SampleClock;

/**
 * Gives samples the times at which they were taken, looking both ways: a sensor samples evenly for the seconds of a window, while
 * its stamps jitter, are rounded, or come several samples at once. Between missing times stamps are laid on a straight line.
 */
final class EvenStamps {

    /** Fewer samples than this tell no interval of their own. */
    private static final int LEAST_LINE = 32;

    private EvenStamps() {}

    /**
     * Evens stamps.
     *
     * @param stamps s, never decreasing; replaced by even times, never decreasing
     * @param interval the stream's, s
     */
    static void even(double[] stamps, double interval) {
        SampleClock clock = new SampleClock(interval);
        int first = 0;
        for (int i = 0; i < stamps.length; i++) {
            clock.next(stamps[i]);
            if (clock.restarted() && i > first) {
                lay(stamps, first, i, interval);
                first = i;
            }
        }
        lay(stamps, first, stamps.length, interval);
    }

    /** Lays the stamps from one sample to before another on a line, by least squares; never before the last of the line ahead. */
    private static void lay(double[] stamps, int from, int to, double interval) {
        double n = to - from;
        double middle = (n - 1) / 2;
        double sum = 0;
        double moment = 0;
        for (int i = from; i < to; i++) {
            double since = stamps[i] - stamps[from];
            sum += since;
            moment += (i - from - middle) * since;
        }
        double slope = n < LEAST_LINE ? interval : 12 * moment / (n * (n * n - 1));
        double start = stamps[from] + sum / n - slope * middle;
        double least = from == 0 ? Double.NEGATIVE_INFINITY : stamps[from - 1];
        for (int i = from; i < to; i++) {
            stamps[i] = Math.max(least, start + slope * (i - from));
        }
    }
}
