package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;

/**
 * Counts steps and hops after a landing: knocks of the force, shorter than a tenth of a second, once the fall is stopped,
 * each clearly after the one before.
 */
final class StepCounter {

    /** The landing's own brake, heels included, is over by then, s. */
    private static final double AFTER_CONTACT_S = 0.35;

    /** Two feet are set down at least so long after one another, s: common practice, no source. */
    private static final double APART_S = 0.2;
    /** A foot set down knocks the pelvis by more than this above or below the force about it, m/s². */
    private static final double KNOCK = 0.3 * Gravity.STANDARD;

    /** The force about a sample is the mean from so long before to so long after it, s. */
    private static final double ABOUT_S = 0.06;
    /** Of who does not settle steps are counted until so long after contact, s. */
    private static final double LATEST_S = 5;

    private StepCounter() {}

    static Steps count(SegmentMotion pelvis, Moments moments, double untilS) {
        Motion motion = pelvis.motion();
        Double settledS = moments.settledS();
        double end = Math.min(settledS == null ? moments.contactS() + LATEST_S : settledS, untilS);
        double start = moments.contactS() + AFTER_CONTACT_S;
        int count = 0;
        double last = moments.contactS();
        for (int i = motion.indexAt(start) + 1; i < motion.size() && motion.time(i) < end; i++) {
            if (Math.abs(motion.force(i).norm() - about(motion, i)) > KNOCK) {
                count += motion.time(i) - last > APART_S ? 1 : 0;
                last = motion.time(i);
            }
        }
        return new Steps(count, count == 0 ? null : direction(pelvis, moments, end));
    }

    private static double about(Motion motion, int i) {
        int from = motion.indexAt(motion.time(i) - ABOUT_S);
        int to = motion.indexAt(motion.time(i) + ABOUT_S);
        double sum = 0;
        for (int k = from; k <= to; k++) {
            sum += motion.force(k).norm();
        }
        return sum / (to - from + 1);
    }

    private static StepDirection direction(SegmentMotion pelvis, Moments moments, double endS) {
        Motion motion = pelvis.motion();
        Vector3 way =
                pelvis.toZeroHeading(motion.placeAt(endS).minus(motion.placeAt(moments.contactS() + AFTER_CONTACT_S)));
        Vector3 turned = pelvis.toHeadingAt(moments.contactS()).rotate(way);
        if (Math.abs(turned.x()) >= Math.abs(turned.y())) {
            return turned.x() < 0 ? StepDirection.BACK : StepDirection.FORWARD;
        }
        return turned.y() > 0 ? StepDirection.LEFT : StepDirection.RIGHT;
    }
}
