package evenfall.fusion.analysis;

import evenfall.fusion.alignment.Stance;
import evenfall.fusion.landing.LandingMeasurer;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.fusion.posture.Covariance;
import evenfall.fusion.posture.MotionWindow;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SensorAxes;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gap;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cuts a sensor's stream into windows about landings and bends, from the quiet stance before to the one after, and says
 * what is known of the motion in them.
 */
final class WindowMaker {

    /** A stance further from contact than this says little about it, s. */
    private static final double BEFORE_REACH_S = 8;

    private static final double AFTER_REACH_S = 8;
    /** The stance before ends so long before contact at least, s: crouch and flight lie between; */
    private static final double BEFORE_CONTACT_S = 0.15;
    /** it begins no more than this before the event ahead is over, s; */
    private static final double INTO_EVENT_S = 0.1;
    /** the stance after begins so long after contact at least, s: nobody stands still sooner. All three common practice, no source. */
    private static final double AFTER_CONTACT_S = 0.2;
    /** Of the stance before its last seconds are used, of the one after its first, s. */
    private static final double BEFORE_USED_S = 2;

    private static final double AFTER_USED_S = 3;
    /** Where there is none a window reaches so far from contact, s. */
    private static final double WITHOUT_STANCE_BEFORE_S = 3;

    private static final double WITHOUT_STANCE_AFTER_S = 5.5;
    /** Two moments that are nearer to one another than this are one, s. */
    private static final double SAME_MOMENT_S = 0.001;
    /** Stillness broken for less than this is one stance, s. */
    private static final double SAME_STANCE_S = 0.7;

    /** Gravity lies in the same direction of the sensor meanwhile; else the strap moved, rad. */
    private static final double SAME_STANCE = Math.toRadians(2.5);

    /** Each gap has unknowns of its own, and the work grows with the cube of their number. */
    private static final int MOST_GAPS = 32;
    /** Single lost samples count from so long before contact to so long after it, s: elsewhere nothing happens between samples. */
    private static final double LOSSES_BEFORE_S = 0.5;

    private static final double LOSSES_AFTER_S = 0.7;
    /** Nearer to contact than about this, s, gaps matter most. */
    private static final double NEAR_CONTACT_S = 0.1;

    private static final double REST_EVERY_S = 0.2;
    /** A person who stands creeps at 1 to 3 cm/s (common practice, no source), m/s. */
    private static final double REST_SIGMA = 0.016;
    /** Just after a landing more, dying away. */
    private static final double FRESH_REST_SIGMA = 0.08;

    private static final double FRESH_REST_S = 0.45;

    private static final double STANCE_TILT_SIGMA = Math.toRadians(3);
    private static final double STANCE_SPEED_SIGMA = 0.03;
    private static final double FILTER_TILT_SIGMA = Math.toRadians(3);
    private static final double FILTER_SPEED_SIGMA = 1.5;
    /** Who stands quietly turns by so much from the beginning to the end, rad; found on simulated sessions. */
    private static final double SWAY_TURN = Math.toRadians(1.2);
    /** Usual drift of the bias of a cheap gyroscope, rad/s². */
    private static final double BIAS_DRIFT = Math.toRadians(0.001);
    /** Bias of a cheap gyroscope of which no stance tells anything, rad/s. */
    private static final double UNKNOWN_BIAS = Math.toRadians(1);

    /** A stance tells the less of the bias the further away it is: by e for so long, s; */
    private static final double BIAS_MEMORY_S = 60;
    /** beyond so many times that it tells nothing. */
    private static final double BIAS_REACH = 3;
    /** A stance longer than this tells no more of it, s. */
    private static final double BIAS_LENGTH_S = 5;

    /** What an impact adds to the speed: what a ringing strap hides between samples, m/s per g. */
    private static final double JOLT_PER_G = 0.0015;

    private static final double CLIPPED_JOLT = 0.2;
    /** So much more force than full scale may have been cut off, m/s². */
    private static final double CLIPPED_FORCE = 40;

    /** What an impact adds to the orientation: rocking of the strap between samples, rad per g. */
    private static final double TURN_PER_G = Math.toRadians(0.007);

    private final SensorStream stream;
    private final List<Stance> stances;
    private final OrientationTrack track;
    private final GapDoubt doubt;

    WindowMaker(SensorStream stream, List<Stance> stances, OrientationTrack track) {
        this.stream = stream;
        this.stances = stances;
        this.track = track;
        this.doubt = new GapDoubt(stream);
    }

    /**
     * A landing's window with the stances it rests on.
     *
     * @param window what the smoother works on
     * @param before the stance before take-off, or null
     * @param after the stance after the landing, or null
     */
    record Cut(
            MotionWindow window,
            @Nullable Stance before,
            @Nullable Stance after) {}

    /**
     * The window of a landing.
     *
     * @param span on the sensor's clock
     */
    Cut landing(LandingSpan span) {
        double contactS = span.contactS();
        Stance before = before(span.earliestS(), contactS);
        Stance after = after(contactS, span.untilS());
        int from = before != null
                ? Math.max(before.from(), index(before.endS() - BEFORE_USED_S))
                : index(Math.max(span.earliestS(), contactS - WITHOUT_STANCE_BEFORE_S));
        double end = after != null ? after.endS() : Math.min(span.untilS(), contactS + WITHOUT_STANCE_AFTER_S);
        // A landing before a sensor's first sample leaves its first two as a window that covers nothing.
        int to = Math.min(
                stream.size(), Math.max(2, index(Math.max(end, contactS + LandingMeasurer.SEEN_WITHIN_S)) + 1));
        from = Math.max(0, Math.min(from, to - 2));
        List<MotionWindow.Rest> rests = new ArrayList<>();
        if (before != null) {
            addRests(rests, from, before.to() - 1, false);
        }
        if (after != null) {
            addRests(rests, after.from(), Math.min(after.to(), to) - 1, true);
        }
        return new Cut(window(from, to, before, contactS, rests, jolts(from, to, contactS)), before, after);
    }

    /** The window of bends: from the stance before to the one after. */
    MotionWindow bends(Stance before, Stance after) {
        int from = Math.max(before.from(), index(before.endS() - BEFORE_USED_S));
        int to = Math.min(after.to(), index(after.startS() + BEFORE_USED_S) + 1);
        List<MotionWindow.Rest> rests = new ArrayList<>();
        addRests(rests, from, before.to() - 1, false);
        for (Stance held : between(before, after)) {
            addRests(rests, held.from(), held.to() - 1, true);
        }
        addRests(rests, after.from(), to - 1, true);
        return window(from, to, before, before.endS(), rests, gaps(from, to, before.endS()));
    }

    private List<Stance> between(Stance before, Stance after) {
        int first = firstEndingAfter(before.endS() + SAME_MOMENT_S);
        int last = first;
        while (last < stances.size() && stances.get(last).endS() < after.startS()) {
            last++;
        }
        return stances.subList(first, last);
    }

    private MotionWindow window(
            int from,
            int to,
            @Nullable Stance before,
            double atS,
            List<MotionWindow.Rest> rests,
            List<MotionWindow.Jolt> jolts) {
        Quaternion start =
                before == null ? track.at(from) : Quaternion.between(meanForce(from, before.to()), Vector3.UP);
        GyroBias bias = gyroBias(atS);
        return new MotionWindow(
                stream,
                from,
                to,
                start,
                before == null ? FILTER_TILT_SIGMA : STANCE_TILT_SIGMA,
                before == null ? FILTER_SPEED_SIGMA : STANCE_SPEED_SIGMA,
                bias.rate(),
                bias.sigma(),
                rests,
                jolts);
    }

    private int index(double timeS) {
        return Math.max(0, Math.min(stream.size() - 1, stream.indexAtOrBefore(timeS)));
    }

    private @Nullable Stance before(double earliestS, double contactS) {
        Stance found = null;
        for (int k = firstEndingAfter(contactS - BEFORE_REACH_S); k < stances.size(); k++) {
            Stance stance = stances.get(k);
            if (stance.endS() > contactS - BEFORE_CONTACT_S) {
                break;
            }
            if (stance.startS() > earliestS - INTO_EVENT_S) {
                found = stance;
            }
        }
        return found;
    }

    /** The first stance after a contact, with those that follow it at once, as far as they are used. */
    private @Nullable Stance after(double contactS, double untilS) {
        Stance found = null;
        for (int k = firstEndingAfter(contactS + AFTER_CONTACT_S); k < stances.size(); k++) {
            Stance next = stances.get(k);
            if (next.startS() < contactS + AFTER_CONTACT_S) {
                continue;
            }
            double reach = found == null ? contactS + AFTER_REACH_S : found.endS() + SAME_STANCE_S;
            if (next.startS() > Math.min(reach, untilS)
                    || (found != null && next.force().angleTo(found.force()) > SAME_STANCE)) {
                break;
            }
            found = found == null ? next : joined(found, next);
            if (found.lengthS() > AFTER_USED_S) {
                break;
            }
        }
        return found == null ? null : cut(found, Math.min(untilS, found.startS() + AFTER_USED_S));
    }

    private int firstEndingAfter(double timeS) {
        int low = 0;
        int high = stances.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (stances.get(middle).endS() < timeS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static Stance joined(Stance a, Stance b) {
        return new Stance(a.from(), b.to(), a.startS(), b.endS(), b.force(), b.rate());
    }

    private Stance cut(Stance s, double endS) {
        int to = Math.min(s.to(), index(endS) + 1);
        return new Stance(s.from(), to, s.startS(), stream.time(to - 1), s.force(), s.rate());
    }

    private void addRests(List<MotionWindow.Rest> rests, int from, int to, boolean fresh) {
        double next = stream.time(from);
        for (int i = from; i <= to; i++) {
            if (stream.time(i) >= next) {
                double age = stream.time(i) - stream.time(from);
                double sigma =
                        fresh ? Math.hypot(REST_SIGMA, FRESH_REST_SIGMA * Math.exp(-age / FRESH_REST_S)) : REST_SIGMA;
                rests.add(new MotionWindow.Rest(i, sigma));
                next += REST_EVERY_S;
            }
        }
    }

    private List<MotionWindow.Jolt> jolts(int from, int to, double contactS) {
        List<MotionWindow.Jolt> jolts = gaps(from, to, contactS);
        int peak = index(contactS);
        double most = 0;
        double clippedS = 0;
        for (int i = peak; i < to && stream.time(i) < contactS + LandingMeasurer.PEAK_WITHIN_S; i++) {
            double size = stream.resultant(i);
            clippedS += stream.accelerationClipped(i) ? 1 / stream.rateHz() : 0;
            if (size > most) {
                most = size;
                peak = i;
            }
        }
        double sigma = Math.hypot(
                JOLT_PER_G * most / Gravity.STANDARD,
                clippedS > 0 ? Math.max(CLIPPED_JOLT, CLIPPED_FORCE * clippedS) : 0);
        if (peak > from && peak < to) {
            double turn = Math.max(TURN_PER_G, TURN_PER_G * most / Gravity.STANDARD);
            jolts.add(new MotionWindow.Jolt(
                    peak, Covariance.even(Math.max(JOLT_PER_G, sigma)), Covariance.even(turn), 0, false));
        }
        return jolts;
    }

    /** The gaps of a window; where there are very many, those next to one another and not near a moment as one. */
    private List<MotionWindow.Jolt> gaps(int from, int to, double atS) {
        List<MotionWindow.Jolt> jolts = new ArrayList<>();
        for (Gap gap : stream.gaps()) {
            if (gap.before() >= from && gap.before() + 1 < to) {
                jolts.add(new MotionWindow.Jolt(
                        gap.before() + 1, doubt.speed(gap), doubt.turn(gap), doubt.begunTilt(gap), true));
            }
        }
        for (Gap loss : SingleLosses.between(
                stream, Math.max(from, index(atS - LOSSES_BEFORE_S)), Math.min(to, index(atS + LOSSES_AFTER_S)))) {
            jolts.add(new MotionWindow.Jolt(loss.before() + 1, doubt.speed(loss), doubt.turn(loss), 0, true));
        }
        jolts.sort(Comparator.comparingInt(MotionWindow.Jolt::index));
        while (jolts.size() > MOST_GAPS) {
            int k = nearestPair(jolts, atS);
            jolts.set(k, jolts.get(k).with(jolts.remove(k + 1)));
        }
        return jolts;
    }

    /** The first of the two neighbours that can best be told as one: near to one another against how far from a moment they are. */
    private int nearestPair(List<MotionWindow.Jolt> jolts, double atS) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k + 1 < jolts.size(); k++) {
            double first = stream.time(jolts.get(k).index());
            double second = stream.time(jolts.get(k + 1).index());
            double away = Math.max(0, Math.max(first - atS, atS - second));
            double size = (second - first) / (NEAR_CONTACT_S + away);
            if (size < least) {
                least = size;
                best = k;
            }
        }
        return best;
    }

    private Vector3 meanForce(int from, int to) {
        return SensorAxes.forceSum(stream, from, to).times(1.0 / (to - from));
    }

    /**
     * The rate that a sensor reads when it does not turn.
     *
     * @param rate rad/s
     * @param sigma one standard deviation of each axis, rad/s
     */
    private record GyroBias(Vector3 rate, double sigma) {}

    /** The mean turn rate of the stances about a moment, longer and nearer ones counting more. */
    private GyroBias gyroBias(double atS) {
        Vector3 sum = Vector3.ZERO;
        double weights = 0;
        double squares = 0;
        double away = 0;
        for (int k = firstEndingAfter(atS - BIAS_REACH * BIAS_MEMORY_S); k < stances.size(); k++) {
            Stance stance = stances.get(k);
            if (stance.startS() > atS + BIAS_REACH * BIAS_MEMORY_S) {
                break;
            }
            double length = Math.min(stance.lengthS(), BIAS_LENGTH_S);
            double awayS = Math.abs(stance.middleS() - atS);
            double nearness = Math.exp(-awayS / BIAS_MEMORY_S);
            double weight = length * length * nearness;
            sum = sum.plus(stance.rate().times(weight));
            weights += weight;
            squares += weight * nearness;
            away += weight * awayS;
        }
        if (weights == 0) {
            return new GyroBias(Vector3.ZERO, UNKNOWN_BIAS);
        }
        double told = Math.hypot(SWAY_TURN * Math.sqrt(squares), BIAS_DRIFT * away) / weights;
        return new GyroBias(sum.times(1 / weights), told * UNKNOWN_BIAS / Math.hypot(told, UNKNOWN_BIAS));
    }
}
