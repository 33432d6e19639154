package evenfall.fusion.posture;

import org.apache.commons.math3.stat.StatUtils;

/**
 * Gives samples the times at which they were taken, looking both ways: a sensor samples evenly for the seconds of a window, while
 * its stamps jitter, are rounded, or come several samples at once. Between missing times stamps are laid on a straight line.
 */
final class EvenStamps {

    /** Only behind a step of more intervals may time be missing. */
    private static final double LONG_STEP = 1.5;
    /** It is where the stamps after are later than those before by so many intervals, */
    private static final double LEAST_MISSING = 0.6;
    /** by so many standard errors, */
    private static final double SURE = 5;
    /** by the mean of so many samples on either side. */
    private static final int SIDE = 64;
    /** Fewer samples than this tell no interval of their own. */
    private static final int LEAST_LINE = 32;
    /** A quarter of normal errors are smaller than this many standard deviations; missing time touches fewer than the rest. */
    private static final double QUARTER = 0.3186;

    /** Half of normal errors are smaller than this many. */
    private static final double HALF = 0.6745;
    /** Twice what a stamp is off the middle of its neighbours varies by so much where each of the three errs by a variance of 1. */
    private static final double OF_THREE = 6;
    /** Errors of stamps that follow one another may be alike: together they are larger than three tell by so much. */
    private static final double ALONE = 1.5;
    /** A step of fewer intervals is one of samples that came together; */
    private static final double TOGETHER = 0.25;
    /** more than this share of them say that samples often do. */
    private static final double OFTEN = 0.1;

    private final double[] stamps;
    private final double interval;
    /** Sums of how much later stamps are than samples of the interval would be, s, over the samples before each. */
    private final double[] lags;
    /** One standard deviation of a stamp's error, s, as if those of a packet were of one each; NaN until it is asked for. */
    private double scatter = Double.NaN;

    private EvenStamps(double[] stamps, double interval) {
        this.stamps = stamps;
        this.interval = interval;
        this.lags = new double[stamps.length + 1];
        for (int i = 0; i < stamps.length; i++) {
            lags[i + 1] = lags[i] + stamps[i] - stamps[0] - i * interval;
        }
    }

    /**
     * Evens stamps.
     *
     * @param stamps s, never decreasing; replaced by even times, never decreasing
     * @param interval the stream's, s; stamps stay as they are where it is not known
     */
    static void even(double[] stamps, double interval) {
        if (stamps.length > 1 && Double.isFinite(interval)) {
            new EvenStamps(stamps, interval).even();
        }
    }

    private void even() {
        int first = 0;
        for (int i = 1; i < stamps.length; i++) {
            if (stamps[i] - stamps[i - 1] > LONG_STEP * interval && isMissing(first, i)) {
                lay(first, i);
                first = i;
            }
        }
        lay(first, stamps.length);
    }

    /** Whether time is missing before a sample of a line that began at another. */
    private boolean isMissing(int first, int at) {
        double later = later(first, at);
        return later > LEAST_MISSING * interval && later > SURE * scatter() * spread(first, at);
    }

    private double scatter() {
        if (Double.isNaN(scatter)) {
            double[] steps = new double[stamps.length - 1];
            for (int i = 1; i < stamps.length; i++) {
                steps[i - 1] = Math.abs(later(0, i)) / spread(0, i);
            }
            scatter = StatUtils.percentile(steps, 25) / QUARTER;
            if (!comeTogether()) {
                // Where samples are lost every now and then, most of those means hold a loss; three samples seldom do.
                scatter = Math.min(scatter, ALONE * scatterOfThree());
            }
        }
        return scatter;
    }

    /** Whether several samples often share about one stamp. */
    private boolean comeTogether() {
        int together = 0;
        for (int i = 1; i < stamps.length; i++) {
            together += stamps[i] - stamps[i - 1] < TOGETHER * interval ? 1 : 0;
        }
        return together > OFTEN * (stamps.length - 1);
    }

    /** One standard deviation of a stamp's error by how far each is from the middle of its neighbours, s. */
    private double scatterOfThree() {
        if (stamps.length < 3) {
            return 0;
        }
        double[] off = new double[stamps.length - 2];
        for (int i = 1; i + 1 < stamps.length; i++) {
            off[i - 1] = Math.abs(stamps[i + 1] - 2 * stamps[i] + stamps[i - 1]);
        }
        return StatUtils.percentile(off, 50) / (HALF * Math.sqrt(OF_THREE));
    }

    /** By how much the stamps from a sample on are later than those before, s. */
    private double later(int first, int at) {
        int from = Math.max(first, at - SIDE);
        int to = Math.min(stamps.length, at + SIDE);
        return (lags[to] - lags[at]) / (to - at) - (lags[at] - lags[from]) / (at - from);
    }

    /** One standard deviation of that for each of a stamp. */
    private double spread(int first, int at) {
        return Math.sqrt(1.0 / Math.min(SIDE, stamps.length - at) + 1.0 / Math.min(SIDE, at - first));
    }

    /** Lays the stamps from one sample to before another on a line, by least squares; never before the last of the line ahead. */
    private void lay(int from, int to) {
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
