package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.fusion.posture.SmoothedMotion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import org.jspecify.annotations.Nullable;

/**
 * How high a peak was that the sensor cut off. The stances before and after tell how much speed the recorded force left
 * unexplained; a cap in the shape of a parabola over the time at full scale holds two thirds of its height times that
 * time, which gives the height.
 */
final class ClippedPeak {

    /** Height of a parabola over its mean. */
    private static final double CAP = 1.5;
    /** Caps are no parabolas: this part of the height may be wrong. */
    private static final double SHAPE_SIGMA = 0.25;
    /** How much of an interval the time at full scale is misjudged by: both ends lie evenly between two samples. */
    private static final double ENDS_SIGMA = Math.sqrt(1.0 / 6);
    /** Longer at full scale, s, the flanks say too little of the top. */
    private static final double LONGEST_S = 0.04;

    private ClippedPeak() {}

    /** The peak, g, or null where nothing was cut off, a gap lies near or too much was cut off. */
    static @Nullable Estimate estimate(SmoothedMotion smoothed, double contactS) {
        Motion motion = smoothed.motion();
        SensorStream stream = motion.stream();
        int from = motion.indexAt(contactS - MomentFinder.PEAK_BEFORE_S);
        int to = motion.indexAt(contactS + MomentFinder.PEAK_AFTER_S);
        Vector3 push = Vector3.ZERO;
        int count = 0;
        for (int i = from; i <= to; i++) {
            if (HiddenContact.gapLength(motion, motion.time(i)) > 0) {
                return null;
            }
            if (stream.accelerationClipped(motion.from() + i)) {
                push = push.plus(motion.force(i));
                count++;
            }
        }
        double interval = 1 / stream.rateHz();
        double length = count * interval;
        if (count == 0 || length > LONGEST_S) {
            return null;
        }
        SmoothedMotion.Jump jump = smoothed.impactJump(push.normalised());
        double height = Math.max(0, CAP * jump.value() / length);
        double sigma = Math.hypot(
                CAP * jump.sigma() / length, height * Math.hypot(SHAPE_SIGMA, ENDS_SIGMA * interval / length));
        double recorded = stream.resultant(motion.from() + MomentFinder.peak(motion, contactS));
        return new Estimate((recorded + height) / Gravity.STANDARD, sigma / Gravity.STANDARD);
    }
}
