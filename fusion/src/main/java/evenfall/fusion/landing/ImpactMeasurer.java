package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import org.jspecify.annotations.Nullable;

/** Measures how hard a landing hit: peaks, rise and loading rate, unfiltered at the sensor's own rate. */
final class ImpactMeasurer {

    /** A first peak is followed by a fall of at least this part of it. */
    private static final double PEAK_FALL = 0.1;

    /** A lower one is the ringing of a strap before the impact, g: common practice, no source. */
    private static final double LEAST_FIRST_PEAK_G = 1.5;

    /** The rise is counted from this share of the first peak to that. */
    private static final double RISE_FROM = 0.1;

    private static final double RISE_TO = 0.9;

    private ImpactMeasurer() {}

    static Impact measure(SegmentMotion segment, @Nullable SegmentMotion upperBack, double contactS) {
        Motion pelvis = segment.motion();
        int peak = MomentFinder.peak(pelvis, contactS);
        double peakG = g(pelvis, peak);
        int first = firstPeak(pelvis, contactS, peak);
        double low = crossing(pelvis, contactS, first, RISE_FROM);
        double high = crossing(pelvis, low, first, RISE_TO);
        double rise = high - low;
        Double riseMs = rise > 0 ? 1000 * rise : null;
        Double slope = rise > 0 ? (gAt(pelvis, high) - gAt(pelvis, low)) / rise : null;
        Double upper = upperBack == null || !upperBack.covers(contactS) ? null : upperPeak(upperBack, contactS);
        boolean clipped = clipped(pelvis, contactS);
        Estimate cutOff = clipped ? ClippedPeak.estimate(segment.smoothed(), contactS) : null;
        return new Impact(peakG, upper, clipped, cutOff, riseMs, slope);
    }

    /** Whether an accelerometer sample stood at full scale about a contact that its own clock reads as {@code ownS}. */
    static boolean clipped(Motion motion, double ownS) {
        SensorStream s = motion.stream();
        int from = motion.from() + motion.indexAt(ownS - MomentFinder.PEAK_BEFORE_S);
        for (int k = from; k < s.size() && s.time(k) <= ownS + MomentFinder.PEAK_AFTER_S; k++) {
            if (s.time(k) >= ownS - MomentFinder.PEAK_BEFORE_S && s.accelerationClipped(k)) {
                return true;
            }
        }
        return false;
    }

    private static double upperPeak(SegmentMotion upperBack, double contactS) {
        Motion motion = upperBack.motion();
        double own = upperBack.ownTime(contactS);
        return g(motion, MomentFinder.peak(motion, own));
    }

    private static double g(Motion motion, int i) {
        return motion.stream().resultant(motion.from() + i) / Gravity.STANDARD;
    }

    private static double gAt(Motion motion, double timeS) {
        int i = motion.indexAt(timeS);
        if (i + 1 >= motion.size()) {
            return g(motion, i);
        }
        double part = (timeS - motion.time(i)) / (motion.time(i + 1) - motion.time(i));
        return g(motion, i) + part * (g(motion, i + 1) - g(motion, i));
    }

    /** The first local maximum after contact that the resultant clearly falls from again, at the latest the largest. */
    private static int firstPeak(Motion motion, double contactS, int largest) {
        int best = Math.min(largest, motion.indexAt(contactS) + 1);
        for (int i = best; i <= largest; i++) {
            if (g(motion, i) > g(motion, best)) {
                best = i;
            } else if (g(motion, best) > LEAST_FIRST_PEAK_G && g(motion, i) < (1 - PEAK_FALL) * g(motion, best)) {
                return best;
            }
        }
        return best;
    }

    /** When the resultant last rises through a share of a peak before it, but not before {@code fromS}. */
    private static double crossing(Motion motion, double fromS, int peak, double share) {
        double level = share * g(motion, peak);
        for (int i = peak; i > 0 && motion.time(i) > fromS; i--) {
            double before = g(motion, i - 1);
            double now = g(motion, i);
            if (before <= level && now > level) {
                double part = (level - before) / (now - before);
                return Math.max(fromS, motion.time(i - 1) + part * (motion.time(i) - motion.time(i - 1)));
            }
        }
        return fromS;
    }
}
