package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.fusion.posture.SmoothedMotion.Spread;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import org.jspecify.annotations.Nullable;

/** Measures where the pelvis went after contact and where it was over the feet. */
final class BalanceMeasurer {

    private static final double SHIFT_S = 0.3;
    /** Sway of a person who stands quietly, m: common practice, no source. */
    private static final double SWAY_FORE_AFT = 0.005;

    private static final double SWAY_LATERAL = 0.007;

    /** Who has just come to rest still sways back over the feet: so much where the stance after has only begun, m, */
    private static final double FRESH_SWAY = 0.06;
    /** dying away over so much of it, s; found on simulated landings whose stance was cut at 0.6 to 3 s. */
    private static final double FRESH_SWAY_S = 1.1;

    private final SegmentMotion pelvis;
    private final Motion motion;
    private final Moments moments;
    private final double headingSigma;
    private final Quaternion toHeading;

    BalanceMeasurer(SegmentMotion pelvis, Moments moments, double headingSigma) {
        this.pelvis = pelvis;
        this.motion = pelvis.motion();
        this.moments = moments;
        this.headingSigma = headingSigma;
        this.toHeading =
                Quaternion.about(Vector3.UP, -pelvis.at(moments.contactS()).yaw());
    }

    Balance measure(LandingScene.@Nullable Span after, Steps steps) {
        Estimate lateral = null;
        Estimate foreAft = null;
        double end = moments.contactS() + SHIFT_S;
        if (pelvis.covers(end)) {
            Vector3 shift = apart(moments.contactS(), motion.placeAt(end));
            Spread spread = spread(moments.contactS(), end);
            double plain = Math.hypot(0.0014, 0.4 * spread.placeAcross());
            lateral = new Estimate(shift.y(), Math.hypot(plain, shift.x() * headingSigma));
            foreAft = new Estimate(shift.x(), Math.hypot(plain, shift.y() * headingSigma));
        }
        OverFeet overFeet = after == null || steps.count() > 0 || steps.feetMoved() ? null : overFeet(after);
        return new Balance(lateral, foreAft, overFeet, steps.count(), steps.direction(), null);
    }

    /** From a place to where the pelvis is at a moment, in the heading at contact. */
    private Vector3 apart(double fromS, Vector3 to) {
        return toHeading.rotate(pelvis.toZeroHeading(to.minus(motion.placeAt(fromS))));
    }

    private Spread spread(double fromS, double toS) {
        return pelvis.smoothed().between(motion.indexAt(fromS), motion.indexAt(toS));
    }

    private OverFeet overFeet(LandingScene.Span after) {
        Vector3 rest = meanPlace(after);
        Vector3 contact = apart(moments.contactS(), rest).times(-1);
        double middleS = (after.startS() + after.endS()) / 2;
        Double lowestS = moments.lowestS();
        Vector3 lowest = lowestS == null ? null : apart(lowestS, rest).times(-1);
        double early = spread(moments.contactS(), middleS).placeAcross();
        double late = lowestS == null ? early : spread(lowestS, middleS).placeAcross();
        // One sigma stands for both moments.
        double place = 0.35 * Math.hypot(early, late) / Math.sqrt(2);
        double fresh = FRESH_SWAY * Math.exp(-(after.endS() - after.startS()) / FRESH_SWAY_S);
        return new OverFeet(
                contact.x(),
                lowest == null ? null : lowest.x(),
                contact.y(),
                lowest == null ? null : lowest.y(),
                Math.sqrt(square(SWAY_FORE_AFT) + square(place) + square(fresh) + square(contact.y() * headingSigma)),
                Math.sqrt(square(SWAY_LATERAL) + square(place) + square(contact.x() * headingSigma)));
    }

    private static double square(double value) {
        return value * value;
    }

    private Vector3 meanPlace(LandingScene.Span span) {
        int from = motion.indexAt(span.startS());
        int to = Math.max(from, motion.indexAt(span.endS()));
        Vector3 sum = Vector3.ZERO;
        for (int i = from; i <= to; i++) {
            sum = sum.plus(motion.place(i));
        }
        return sum.times(1.0 / (to - from + 1));
    }
}
