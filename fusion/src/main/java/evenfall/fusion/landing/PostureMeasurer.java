package evenfall.fusion.landing;

import evenfall.fusion.filtering.Butterworth;
import evenfall.fusion.filtering.Derivative;
import evenfall.fusion.filtering.ZeroPhase;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.special.Erf;
import org.jspecify.annotations.Nullable;

/** Takes the angles of a landing at its moments, and how fast the spine folds. */
final class PostureMeasurer {

    /** The farthest angle is looked for within this time of contact, s. */
    static final double WITHIN_S = 0.6;

    /** The spine folds fastest within this time of contact, s; */
    static final double COLLAPSE_WITHIN_S = 0.25;
    /** its rate is taken after a low-pass as the contract words it. */
    private static final double COLLAPSE_CUTOFF_HZ = 20;
    /** Stiff bodies fold with parts of up to here and more, straps rock from here on, Hz. */
    private static final double FOLDING_CUTOFF_HZ = 16;
    /** A strapped sensor rocks on skin and strap at 20 Hz and above, the body turns and folds far more slowly, Hz. */
    private static final double STRAP_CUTOFF_HZ = 12;

    /** To the sides straps rock less, and legs that take a landing one after the other tip the pelvis quickly, Hz. */
    private static final double SIDEWAYS_CUTOFF_HZ = 20;

    /** Angles are taken at least so often, however slow the sensor: common practice, no source. */
    private static final double LEAST_HZ = 200;

    /** Filter ends must not reach into the stretch that counts, s. */
    static final double ROOM_S = 0.15;

    /** How fast an angle changes at contact is told from so long before to so long after, s. */
    private static final double AROUND_CONTACT_S = 0.02;

    private final SegmentMotion pelvis;
    private final @Nullable SegmentMotion upperBack;
    private final Moments moments;
    private final double step;

    PostureMeasurer(SegmentMotion pelvis, @Nullable SegmentMotion upperBack, Moments moments) {
        this.pelvis = pelvis;
        this.upperBack = upperBack;
        this.moments = moments;
        this.step = 1 / Math.max(LEAST_HZ, pelvis.motion().stream().rateHz());
    }

    /** The seven angle groups with a sigma for each change. */
    Posture measure(AngleSigmas sigmas) {
        if (pelvis.motion().stream().durationS() < moments.contactS() + WITHIN_S) {
            // The farthest angle may have come after the end of the recording.
            return new Posture(null, null, null, null, null, null, null);
        }
        SegmentMotion upper = upperBack;
        boolean trunk = upper != null && coversLanding(upper, moments.contactS()) && seen(upper);
        boolean hips = seen(pelvis);
        boolean both = trunk && hips;
        List<BodyMoment> course = course();
        return new Posture(
                trunk ? excursion(course, STRAP_CUTOFF_HZ, BodyMoment::flexion, sigmas::trunkFlexion) : null,
                trunk ? excursion(course, SIDEWAYS_CUTOFF_HZ, BodyMoment::lean, sigmas::trunkLean) : null,
                hips ? excursion(course, STRAP_CUTOFF_HZ, BodyMoment::rotation, sigmas::pelvicRotation) : null,
                hips ? excursion(course, STRAP_CUTOFF_HZ, BodyMoment::tilt, sigmas::pelvicTilt) : null,
                hips ? excursion(course, SIDEWAYS_CUTOFF_HZ, BodyMoment::obliquity, sigmas::pelvicObliquity) : null,
                both ? excursion(course, STRAP_CUTOFF_HZ, BodyMoment::twist, sigmas::twist) : null,
                both ? excursion(course, STRAP_CUTOFF_HZ, BodyMoment::spineFlexion, sigmas::spineFlexion) : null);
    }

    /** Whether no long gap may hide the farthest angle, and no strap that moved makes it wrong. */
    private boolean seen(SegmentMotion segment) {
        return segment.held() && !LongGap.within(segment, moments.contactS(), moments.contactS() + WITHIN_S);
    }

    /** The moments from contact on, with room for a filter about them, one a {@link #step}. */
    private List<BodyMoment> course() {
        double end = Math.min(moments.contactS() + WITHIN_S, endOfMotion());
        int n = (int) Math.floor((end - moments.contactS()) / step) + 2 * room() + 1;
        List<BodyMoment> course = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            course.add(at(moments.contactS() + (i - room()) * step));
        }
        return course;
    }

    private int room() {
        return (int) Math.round(ROOM_S / step);
    }

    private BodyMoment at(double timeS) {
        return BodyMoment.at(timeS, pelvis, upperBack);
    }

    /** Whether a segment was measured from contact until {@link #WITHIN_S} after it. */
    static boolean coversLanding(SegmentMotion segment, double contactS) {
        return segment.covers(contactS) && segment.covers(contactS + WITHIN_S);
    }

    /** The farthest angle is looked for in what the strap's rocking leaves. */
    private Excursion excursion(
            List<BodyMoment> course,
            double cutoffHz,
            ToDoubleFunction<BodyMoment> angle,
            ToDoubleFunction<AngleSigmas.Change> sigma) {
        int first = room();
        BodyMoment atContact = course.get(first);
        double contact = angle.applyAsDouble(atContact);
        double[] body = ZeroPhase.filter(
                Butterworth.lowPass(cutoffHz, 1 / step),
                course.stream()
                        .mapToDouble(m -> contact + Math.IEEEremainder(angle.applyAsDouble(m) - contact, 360))
                        .toArray());
        int highest = first;
        int lowest = first;
        for (int i = first + 1; i < body.length - room(); i++) {
            highest = body[i] > body[highest] ? i : highest;
            lowest = body[i] < body[lowest] ? i : lowest;
        }
        double above = body[highest] - contact;
        double below = contact - body[lowest];
        boolean up = above > below;
        double change = up ? above : -below;
        int near = (int) Math.round(AROUND_CONTACT_S / step);
        double plain = sigma.applyAsDouble(new AngleSigmas.Change(
                change,
                atContact,
                course.get(up ? highest : lowest),
                List.of(course.get(first - near), course.get(first + near)),
                2 * near * step));
        Double lowestS = moments.lowestS();
        return new Excursion(
                contact,
                angle.applyAsDouble(at(moments.peakS())),
                lowestS == null ? null : angle.applyAsDouble(at(lowestS)),
                contact + change,
                change,
                Math.hypot(plain, otherSide(Math.abs(above - below), above + below, plain)));
    }

    /**
     * What it adds to the sigma of a change that the angle may truly have gone farther to the other side: the chance of that, times the
     * way from one side to the other. Both err by the sigma, and their difference by √2 of it.
     *
     * @param apart by how much the one side is farther, deg
     * @param way from the farthest to the one side to the farthest to the other, deg
     * @param sigma of either, deg
     */
    private static double otherSide(double apart, double way, double sigma) {
        return way * Math.sqrt(Erf.erfc(apart / (2 * sigma)) / 2);
    }

    private double endOfMotion() {
        return pelvis.motion().time(pelvis.motion().size() - 1);
    }

    /** How fast the upper back flexes against the pelvis shortly after contact; null where gaps or the end hide it. */
    @Nullable Collapse collapse() {
        SegmentMotion upper = upperBack;
        double start = moments.contactS() - ROOM_S;
        double end = moments.contactS() + COLLAPSE_WITHIN_S + ROOM_S;
        if (upper == null || !upper.covers(start) || !upper.covers(end) || !seen(upper) || !seen(pelvis)) {
            return null;
        }
        int n = (int) Math.round((end - start) / step) + 1;
        double[] flexion = new double[n];
        for (int i = 0; i < n; i++) {
            flexion[i] = at(start + i * step).spineFlexion();
        }
        double all = fastest(flexion, start);
        double body = fastest(ZeroPhase.filter(Butterworth.lowPass(FOLDING_CUTOFF_HZ, 1 / step), flexion), start);
        return new Collapse(Math.max(0, body), Math.max(0, all - body));
    }

    /** The largest rate within the time that counts, low-passed as the measure asks, deg/s. */
    private double fastest(double[] flexion, double startS) {
        double[] rate = Derivative.first(
                ZeroPhase.filter(Butterworth.lowPass(COLLAPSE_CUTOFF_HZ, 1 / step), flexion), 1 / step);
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < rate.length; i++) {
            double t = startS + i * step;
            if (t >= moments.contactS() && t <= moments.contactS() + COLLAPSE_WITHIN_S) {
                most = Math.max(most, rate[i]);
            }
        }
        return most;
    }
}
