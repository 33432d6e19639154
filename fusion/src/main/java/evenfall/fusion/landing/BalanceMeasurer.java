package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.fusion.posture.SmoothedMotion.Way;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import org.jspecify.annotations.Nullable;

/** Measures where the pelvis went after contact and where it was over the feet. */
final class BalanceMeasurer {

    /** Shifts are counted from contact to so long after it, s. */
    private static final double SHIFT_S = 0.3;
    /** Sway of a person who stands quietly, m: common practice, no source. */
    private static final double SWAY_FORE_AFT = 0.005;

    private static final double SWAY_LATERAL = 0.007;

    /** Who has just come to rest still sways back over the feet: so much where the stance after has only begun, m, */
    private static final double FRESH_SWAY = 0.05;
    /** dying away over so much of it, s; found on simulated landings whose stance was cut at 0.6 to 3 s. */
    private static final double FRESH_SWAY_S = 1.1;

    /** Steadiness of a strap, m: what is left where nothing else errs. */
    private static final double SHIFT_SIGMA_M = 0.0009;

    /** People come to rest more surely than the smoother is told: so much of its sigma is true of a shift, */
    private static final Share SHIFT = new Share(0.36, 0.5);
    /** and of a place over the feet. */
    private static final Share PLACE = new Share(0.29, 0.4);

    /**
     * How much of what the smoother says of a way is true.
     *
     * @param seen of the standard deviation of what was seen
     * @param hidden of that of what gaps hide
     */
    private record Share(double seen, double hidden) {}

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
        this.toHeading = pelvis.toHeadingAt(moments.contactS());
    }

    Balance measure(LandingScene.@Nullable Span after, Steps steps) {
        Estimate lateral = null;
        Estimate foreAft = null;
        double end = moments.contactS() + SHIFT_S;
        if (pelvis.covers(end)) {
            Vector3 shift = apart(moments.contactS(), motion.placeAt(end));
            Way way = way(moments.contactS(), end);
            lateral = new Estimate(shift.y(), shiftSigma(way, Vector3.Y, shift.x()));
            foreAft = new Estimate(shift.x(), shiftSigma(way, Vector3.X, shift.y()));
        }
        OverFeet overFeet = after == null || steps.count() > 0 ? null : overFeet(after);
        return new Balance(lateral, foreAft, overFeet, steps.count(), steps.direction(), null);
    }

    /** From a place to where the pelvis is at a moment, in the heading at contact. */
    private Vector3 apart(double fromS, Vector3 to) {
        return toHeading.rotate(pelvis.toZeroHeading(to.minus(motion.placeAt(fromS))));
    }

    private double shiftSigma(Way way, Vector3 along, double across) {
        return Math.sqrt(square(SHIFT_SIGMA_M) + variance(way, SHIFT, along) + square(across * headingSigma));
    }

    private Way way(double fromS, double toS) {
        return pelvis.smoothed().wayBetween(motion.indexAt(fromS), motion.indexAt(toS));
    }

    /** Of a way along an axis of the heading at contact. */
    private double variance(Way way, Share share, Vector3 along) {
        Vector3 inWorld = pelvis.fromZeroHeading(toHeading.rotateBack(along));
        return square(share.seen() * way.seen().along(inWorld))
                + square(share.hidden() * way.hidden().along(inWorld));
    }

    private OverFeet overFeet(LandingScene.Span after) {
        Vector3 rest = meanPlace(after);
        Vector3 contact = apart(moments.contactS(), rest).times(-1);
        double middleS = (after.startS() + after.endS()) / 2;
        Double lowestS = moments.lowestS();
        Vector3 lowest = lowestS == null ? null : apart(lowestS, rest).times(-1);
        Way early = way(moments.contactS(), middleS);
        Way late = lowestS == null ? early : way(lowestS, middleS);
        double fresh = FRESH_SWAY * Math.exp(-(after.endS() - after.startS()) / FRESH_SWAY_S);
        return new OverFeet(
                contact.x(),
                lowest == null ? null : lowest.x(),
                contact.y(),
                lowest == null ? null : lowest.y(),
                Math.sqrt(square(SWAY_FORE_AFT)
                        + meanVariance(early, late, Vector3.X)
                        + square(fresh)
                        + square(contact.y() * headingSigma)),
                Math.sqrt(square(SWAY_LATERAL)
                        + meanVariance(early, late, Vector3.Y)
                        + square(contact.x() * headingSigma)));
    }

    /** One sigma stands for both moments. */
    private double meanVariance(Way early, Way late, Vector3 along) {
        return (variance(early, PLACE, along) + variance(late, PLACE, along)) / 2;
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
