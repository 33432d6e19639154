package evenfall.fusion.orientation;

import evenfall.ingest.recording.SensorStream;

/**
 * Turns time stamps into the intervals that samples stand for, looking only back.
 *
 * <p>A sensor samples more evenly than its stamps say: they jitter, are rounded, or come several samples at once. So
 * the clock runs on at the nominal interval and is drawn to the stamps by a small part of its lag; a lag that stands
 * out from the usual ones is missing time and is made up for at once.
 */
final class SampleClock {

    /** How much of its lag the clock makes up a sample: a time constant of 20 samples. */
    private static final double DRAW = 0.05;

    /** Missing time stands out from the usual lag by this factor. */
    private static final double OUTSTANDING = 4;

    /** No missing time below this many intervals. */
    private static final double LEAST_MISSING = 0.7;

    /** Up to so many intervals more than one are a lost sample, whose time the next one covers; above, a gap. */
    private static final double MOST_LOST = SensorStream.GAP_INTERVALS - 1;

    private final double nominal;
    private double now;
    private double usualLag;
    private double missing;
    private boolean started;

    /** A clock of samples that come every {@code nominal} s. */
    SampleClock(double nominal) {
        this.nominal = nominal;
    }

    /**
     * The interval that ends at the sample stamped {@code stamp} (s, never decreasing), s, without what is
     * {@link #missing}.
     */
    double next(double stamp) {
        missing = 0;
        if (!started) {
            started = true;
            now = stamp;
            return nominal;
        }
        double lag = stamp - now - nominal;
        double size = Math.abs(lag);
        if (lag > Math.max(LEAST_MISSING * nominal, OUTSTANDING * usualLag)) {
            now = stamp;
            if (lag > MOST_LOST * nominal) {
                missing = lag;
                return nominal;
            }
            return nominal + lag;
        }
        usualLag += DRAW * (size - usualLag);
        double interval = Math.max(0, nominal + DRAW * lag);
        now += interval;
        return interval;
    }

    /** Time missing before the interval last told, s; 0 if none. */
    double missing() {
        return missing;
    }
}
