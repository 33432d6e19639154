package evenfall.fusion.landing;

import evenfall.fusion.filtering.Butterworth;
import evenfall.fusion.filtering.Derivative;
import evenfall.fusion.filtering.ZeroPhase;
import evenfall.fusion.rotation.SegmentAngles;
import evenfall.ingest.recording.SensorStream;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Takes the angles of a landing at its moments, and how fast the spine folds. */
final class PostureMeasurer {

    /** The farthest angle is looked for within this time of contact, s. */
    static final double WITHIN_S = 0.6;

    private static final double COLLAPSE_WITHIN_S = 0.25;
    private static final double COLLAPSE_CUTOFF_HZ = 20;
    /** A strapped sensor rocks on skin and strap at 20 Hz and above, the spine folds far more slowly, Hz. */
    private static final double STRAP_CUTOFF_HZ = 12;

    /** Filter ends must not reach into the stretch that counts, s. */
    private static final double COLLAPSE_ROOM_S = 0.15;

    private final SegmentMotion pelvis;
    private final @Nullable SegmentMotion upperBack;
    private final Moments moments;
    private final double step;

    PostureMeasurer(SegmentMotion pelvis, @Nullable SegmentMotion upperBack, Moments moments) {
        this.pelvis = pelvis;
        this.upperBack = upperBack;
        this.moments = moments;
        this.step = 1 / Math.max(200, pelvis.motion().stream().rateHz());
    }

    /** The seven angle groups with a sigma for each change. */
    Posture measure(AngleSigmas sigmas) {
        if (pelvis.motion().stream().durationS() < moments.contactS() + WITHIN_S) {
            // The farthest angle may have come after the end of the recording.
            return new Posture(null, null, null, null, null, null, null);
        }
        Excursion rotation = excursion(t -> pelvis.at(t).yawDegrees());
        Excursion tilt = excursion(t -> pelvis.at(t).flexionDegrees());
        Excursion obliquity = excursion(t -> pelvis.at(t).leanDegrees());
        SegmentMotion upper = upperBack;
        if (upper == null || !coversLanding(upper, moments.contactS())) {
            return sigmas.apply(new Posture(null, null, rotation, tilt, obliquity, null, null));
        }
        return sigmas.apply(new Posture(
                excursion(t -> upper.at(t).flexionDegrees()),
                excursion(t -> upper.at(t).leanDegrees()),
                rotation,
                tilt,
                obliquity,
                excursion(t -> twist(upper.at(t), pelvis.at(t))),
                excursion(t -> upper.at(t).flexionDegrees() - pelvis.at(t).flexionDegrees())));
    }

    /** Whether a segment was measured from contact until {@link #WITHIN_S} after it, or to the end of its window. */
    static boolean coversLanding(SegmentMotion segment, double contactS) {
        SensorStream stream = segment.motion().stream();
        return segment.covers(contactS) && segment.ownTime(contactS) + WITHIN_S <= stream.durationS();
    }

    private static double twist(SegmentAngles upper, SegmentAngles pelvis) {
        return Math.toDegrees(Math.IEEEremainder(upper.yaw() - pelvis.yaw(), 2 * Math.PI));
    }

    private Excursion excursion(DoubleUnaryOperator angle) {
        double contact = angle.applyAsDouble(moments.contactS());
        double max = contact;
        double end = Math.min(moments.contactS() + WITHIN_S, endOfMotion());
        for (double t = moments.contactS() + step; t <= end; t += step) {
            double value = angle.applyAsDouble(t);
            if (Math.abs(value - contact) > Math.abs(max - contact)) {
                max = value;
            }
        }
        Double lowestS = moments.lowestS();
        return new Excursion(
                contact,
                angle.applyAsDouble(moments.peakS()),
                lowestS == null ? null : angle.applyAsDouble(lowestS),
                max,
                max - contact,
                0);
    }

    private double endOfMotion() {
        return pelvis.motion().time(pelvis.motion().size() - 1);
    }

    /** Largest rate at which the upper back flexes against the pelvis shortly after contact, deg/s. */
    @Nullable Double collapse() {
        SegmentMotion upper = upperBack;
        double start = moments.contactS() - COLLAPSE_ROOM_S;
        double end = moments.contactS() + COLLAPSE_WITHIN_S + COLLAPSE_ROOM_S;
        if (upper == null || !upper.covers(start) || !upper.covers(end)) {
            return null;
        }
        int n = (int) Math.round((end - start) / step) + 1;
        double[] flexion = new double[n];
        for (int i = 0; i < n; i++) {
            double t = start + i * step;
            flexion[i] = upper.at(t).flexionDegrees() - pelvis.at(t).flexionDegrees();
        }
        double rateHz = 1 / step;
        double[] body = ZeroPhase.filter(Butterworth.lowPass(STRAP_CUTOFF_HZ, rateHz), flexion);
        double[] rate =
                Derivative.first(ZeroPhase.filter(Butterworth.lowPass(COLLAPSE_CUTOFF_HZ, rateHz), body), rateHz);
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            double t = start + i * step;
            if (t >= moments.contactS() && t <= moments.contactS() + COLLAPSE_WITHIN_S) {
                most = Math.max(most, rate[i]);
            }
        }
        return Math.max(0, most);
    }
}
