package evenfall.fusion.accuracy;

import evenfall.fusion.filtering.Butterworth;
import evenfall.fusion.filtering.Derivative;
import evenfall.fusion.filtering.ZeroPhase;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SegmentAngles;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One who knows everything but what a landing does to the body: mounting, clock, constant errors of the sensors, the moments,
 * and orientation, speed and place in the stances before and after. Only the samples tell what comes between. What it errs
 * by is the floor for a program that takes sensors for fixed to the bone.
 *
 * <p>The samples are integrated with the trapezoid rule from the stance before; what the end misses the stance after by is laid
 * out evenly over time, as is best for errors that grow by chance steps.
 */
final class KnowingObserver {

    private static final Vector3 GRAVITY = new Vector3(0, 0, -9.80665);
    private static final double CHANGE_WITHIN_S = 0.6;
    private static final double COLLAPSE_WITHIN_S = 0.25;
    private static final double COLLAPSE_HZ = 20;
    private static final double SHIFT_AFTER_S = 0.3;

    private static final List<Figure> CHANGES = List.of(
            Figure.ROTATION, Figure.OBLIQUITY, Figure.TILT, Figure.FLEXION, Figure.LEAN, Figure.TWIST, Figure.SPINE);

    private static final Map<Figure, Figure> AT_CONTACT = Map.of(
            Figure.OBLIQUITY,
            Figure.OBLIQUITY_AT_CONTACT,
            Figure.TILT,
            Figure.TILT_AT_CONTACT,
            Figure.FLEXION,
            Figure.FLEXION_AT_CONTACT,
            Figure.LEAN,
            Figure.LEAN_AT_CONTACT);

    private final TrueBody body;
    private final KnownSamples pelvis;
    private final KnownSamples upperBack;
    private final double smoothing;

    /**
     * Takes the samples of both sensors.
     *
     * @param smoothing cut-off of a zero-phase low-pass on the angles, Hz, against rocking of the straps; 0 for none
     */
    KnowingObserver(TrueBody body, KnownSamples pelvis, KnownSamples upperBack, double smoothing) {
        this.body = body;
        this.pelvis = pelvis;
        this.upperBack = upperBack;
        this.smoothing = smoothing;
    }

    /** Followed motion of one sensor at its samples. */
    private record Track(List<Double> time, List<Quaternion> orientation, List<Vector3> speed, List<Vector3> place) {

        int at(double t) {
            int i = 0;
            while (i + 2 < time.size() && time.get(i + 1) <= t) {
                i++;
            }
            return i;
        }

        double part(int i, double t) {
            return (t - time.get(i)) / (time.get(i + 1) - time.get(i));
        }

        Vector3 between(List<Vector3> values, double t) {
            int i = at(t);
            return values.get(i).plus(values.get(i + 1).minus(values.get(i)).times(part(i, t)));
        }

        Quaternion orientationAt(double t) {
            int i = at(t);
            return orientation.get(i).slerp(orientation.get(i + 1), part(i, t));
        }
    }

    /**
     * Adds the errors at one landing; all times of the truth, s.
     *
     * @param fromS in the stance before
     * @param toS in the stance after
     * @return false where time is missing and nothing can be said
     */
    boolean add(LandingErrors errors, double fromS, double contactS, double lowestS, double toS) {
        Track low = follow(Place.PELVIS, pelvis, fromS, toS);
        Track high = follow(Place.UPPER_BACK, upperBack, fromS, toS);
        if (low == null || high == null) {
            return false;
        }
        Vector3 slower = low.between(low.speed(), contactS).minus(body.speed(contactS));
        errors.put(Figure.SPEED, -slower.z(), 0, null);
        Vector3 atContact = low.between(low.place(), contactS).minus(body.place(contactS));
        Vector3 atLowest = low.between(low.place(), lowestS).minus(body.place(lowestS));
        double later = contactS + SHIFT_AFTER_S;
        Vector3 shift = low.between(low.place(), later).minus(body.place(later)).minus(atContact);
        double heading =
                SegmentAngles.of(body.orientation(Place.PELVIS, contactS)).yaw();
        Vector3 forward = new Vector3(Math.cos(heading), Math.sin(heading), 0);
        errors.put(Figure.DEPTH, atContact.z() - atLowest.z(), 0, null);
        errors.put(Figure.SHIFT_FORWARD, shift.dot(forward), 0, null);
        errors.put(Figure.SHIFT_LEFT, shift.dot(Vector3.UP.cross(forward)), 0, null);
        errors.put(Figure.OVER_FORWARD, atContact.dot(forward), 0, null);
        errors.put(Figure.OVER_LEFT, atContact.dot(Vector3.UP.cross(forward)), 0, null);
        addAngles(errors, low, high, contactS);
        return true;
    }

    private @Nullable Track follow(Place place, KnownSamples s, double fromS, double toS) {
        int from = 0;
        while (from < s.time().size() && s.time().get(from) < fromS) {
            from++;
        }
        int to = from;
        while (to + 1 < s.time().size() && s.time().get(to + 1) <= toS) {
            to++;
        }
        double interval = s.time().get(1) - s.time().get(0);
        for (int i = from; i < to; i++) {
            if (s.time().get(i + 1) - s.time().get(i) > SensorStream.GAP_INTERVALS * interval) {
                return null;
            }
        }
        List<Double> time = s.time().subList(from, to + 1);
        List<Quaternion> orientation = turned(place, time, s.rate().subList(from, to + 1));
        List<Vector3> force = new ArrayList<>();
        for (int i = 0; i < time.size(); i++) {
            force.add(orientation.get(i).rotate(s.force().get(from + i)).plus(GRAVITY));
        }
        List<Vector3> speed = closed(time, force, body.speed(time.get(0)), body.speed(time.get(time.size() - 1)));
        List<Vector3> way = closed(time, speed, body.place(time.get(0)), body.place(time.get(time.size() - 1)));
        return new Track(time, orientation, speed, way);
    }

    private List<Quaternion> turned(Place place, List<Double> time, List<Vector3> rate) {
        List<Quaternion> track = new ArrayList<>();
        Quaternion q = body.orientation(place, time.get(0));
        track.add(q);
        for (int i = 1; i < time.size(); i++) {
            Vector3 mean = rate.get(i - 1).plus(rate.get(i)).times(0.5);
            q = q.times(Quaternion.fromBodyRate(mean, time.get(i) - time.get(i - 1)))
                    .normalised();
            track.add(q);
        }
        double start = time.get(0);
        double end = time.get(time.size() - 1);
        Vector3 miss = body.orientation(place, end).times(q.conjugate()).rotationVector();
        for (int i = 0; miss.norm() > 0 && i < time.size(); i++) {
            double angle = miss.norm() * (time.get(i) - start) / (end - start);
            track.set(i, Quaternion.about(miss, angle).times(track.get(i)));
        }
        return track;
    }

    /** Integral from one value to another, what it misses the end by laid out evenly. */
    private static List<Vector3> closed(List<Double> time, List<Vector3> slope, Vector3 first, Vector3 last) {
        List<Vector3> sum = new ArrayList<>();
        sum.add(first);
        for (int i = 1; i < time.size(); i++) {
            double half = (time.get(i) - time.get(i - 1)) / 2;
            sum.add(sum.get(i - 1).plus(slope.get(i - 1).plus(slope.get(i)).times(half)));
        }
        double start = time.get(0);
        double length = time.get(time.size() - 1) - start;
        Vector3 miss = last.minus(sum.get(sum.size() - 1));
        for (int i = 0; i < sum.size(); i++) {
            sum.set(i, sum.get(i).plus(miss.times((time.get(i) - start) / length)));
        }
        return sum;
    }

    /** Angles at one moment, deg, in the order of {@link #CHANGES}. */
    private static double[] angles(Quaternion pelvis, Quaternion upperBack) {
        SegmentAngles low = SegmentAngles.of(pelvis);
        SegmentAngles high = SegmentAngles.of(upperBack);
        return new double[] {
            low.yawDegrees(),
            low.leanDegrees(),
            low.flexionDegrees(),
            high.flexionDegrees(),
            high.leanDegrees(),
            Math.IEEEremainder(high.yawDegrees() - low.yawDegrees(), 360),
            high.flexionDegrees() - low.flexionDegrees()
        };
    }

    /** Angles by the times of a track, each a row, without leaps of heading. */
    private static double[][] series(List<Double> times, Function<Double, double[]> at) {
        double[][] rows = new double[CHANGES.size()][times.size()];
        for (int i = 0; i < times.size(); i++) {
            double[] now = at.apply(times.get(i));
            for (int k = 0; k < now.length; k++) {
                rows[k][i] = i == 0 ? now[k] : rows[k][i - 1] + Math.IEEEremainder(now[k] - rows[k][i - 1], 360);
            }
        }
        return rows;
    }

    private void addAngles(LandingErrors errors, Track low, Track high, double contactS) {
        double last = high.time().get(high.time().size() - 1);
        List<Double> times = low.time().stream().filter(t -> t <= last).toList();
        double rate = (times.size() - 1) / (times.get(times.size() - 1) - times.get(0));
        double[][] seen = series(times, t -> angles(low.orientationAt(t), high.orientationAt(t)));
        double[][] real =
                series(times, t -> angles(body.orientation(Place.PELVIS, t), body.orientation(Place.UPPER_BACK, t)));
        int at = low.at(contactS);
        double part = low.part(at, contactS);
        for (int k = 0; k < seen.length; k++) {
            double[] smooth =
                    smoothing > 0 ? ZeroPhase.filter(Butterworth.twoPassLowPass(smoothing, rate), seen[k]) : seen[k];
            double seenAt = smooth[at] + part * (smooth[at + 1] - smooth[at]);
            double realAt = real[k][at] + part * (real[k][at + 1] - real[k][at]);
            double change = 0;
            double up = 0;
            double down = 0;
            for (int i = at + 1; i < times.size() && times.get(i) <= contactS + CHANGE_WITHIN_S; i++) {
                double s = smooth[i] - seenAt;
                change = Math.abs(s) > Math.abs(change) ? s : change;
                up = Math.max(up, real[k][i] - realAt);
                down = Math.min(down, real[k][i] - realAt);
            }
            errors.put(CHANGES.get(k), change, new TrueLanding.Angle(realAt, up, down).change(change), null);
            Figure atContact = AT_CONTACT.get(CHANGES.get(k));
            if (atContact != null) {
                errors.put(atContact, seenAt - realAt, 0, null);
            }
            if (CHANGES.get(k) == Figure.SPINE) {
                double truth = fastest(times, real[k], rate, contactS);
                errors.put(Figure.COLLAPSE, fastest(times, smooth, rate, contactS), truth, null);
            }
        }
    }

    /** Both rates are smoothed as the contract says, so what is left is what the samples do not hold. */
    private static double fastest(List<Double> times, double[] angle, double rate, double contactS) {
        double[] slope = Derivative.first(ZeroPhase.filter(Butterworth.twoPassLowPass(COLLAPSE_HZ, rate), angle), rate);
        double most = 0;
        for (int i = 0; i < slope.length; i++) {
            if (times.get(i) >= contactS && times.get(i) <= contactS + COLLAPSE_WITHIN_S) {
                most = Math.max(most, slope[i]);
            }
        }
        return most;
    }
}
