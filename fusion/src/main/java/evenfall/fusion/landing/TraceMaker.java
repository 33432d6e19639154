package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.ingest.recording.Gravity;
import org.jspecify.annotations.Nullable;

/** Makes the columns of one landing's chart. */
final class TraceMaker {

    /** A chart begins so long before contact: longer than a flight; common practice, no source. */
    private static final double BEFORE_S = 1.0;
    /** So that who asks whether it stays settled for a second can tell. */
    private static final double AFTER_SETTLED_S = 1.1;

    /** It ends no later than this after contact. */
    private static final double LONGEST_AFTER_S = 3.0;
    /** More points than this a second no chart shows. */
    private static final double MOST_HZ = 400;
    /** A rate is a little above what it is meant to be as often as below: this share of {@link #MOST_HZ} leaves out no sample. */
    private static final double RATE_ROOM = 0.01;

    private TraceMaker() {}

    static LandingTrace make(SegmentMotion pelvis, @Nullable SegmentMotion upperBack, Moments moments) {
        Motion motion = pelvis.motion();
        double contact = moments.contactS();
        Double settled = moments.settledS();
        double after =
                settled == null ? LONGEST_AFTER_S : Math.min(LONGEST_AFTER_S, settled + AFTER_SETTLED_S - contact);
        int stride = (int) Math.max(1, Math.ceil(motion.stream().rateHz() / MOST_HZ - RATE_ROOM));
        int from = motion.indexAt(contact - BEFORE_S);
        int to = motion.indexAt(contact + after);
        int n = (to - from) / stride + 1;
        double[][] c = new double[7][n];
        SegmentMotion upper = upperBack != null && upperBack.covers(contact) ? upperBack : null;
        double[][] u = new double[4][n];
        double ground = motion.placeAt(contact).z();
        for (int k = 0; k < n; k++) {
            int i = from + k * stride;
            double t = motion.time(i);
            BodyMoment both = BodyMoment.at(t, pelvis, upper);
            c[0][k] = t - contact;
            c[1][k] = largest(motion, i, stride);
            c[2][k] = motion.place(i).z() - ground;
            c[3][k] = motion.speed(i).z();
            c[4][k] = both.tilt();
            c[5][k] = both.obliquity();
            c[6][k] = both.rotation();
            if (upper != null) {
                u[0][k] = largest(upper.motion(), upper.indexAt(t), stride);
                u[1][k] = both.flexion();
                u[2][k] = both.lean();
                u[3][k] = both.twist();
            }
        }
        return new LandingTrace(
                c[0],
                c[1],
                upper == null ? null : u[0],
                c[2],
                c[3],
                c[4],
                c[5],
                c[6],
                upper == null ? null : u[1],
                upper == null ? null : u[2],
                upper == null ? null : u[3]);
    }

    /** The largest resultant of the samples a drawn point stands for, g, so that thinning hides no peak. */
    private static double largest(Motion motion, int i, int stride) {
        double most = 0;
        for (int k = i; k < Math.min(i + stride, motion.size()); k++) {
            most = Math.max(most, motion.stream().resultant(motion.from() + k));
        }
        return most / Gravity.STANDARD;
    }
}
