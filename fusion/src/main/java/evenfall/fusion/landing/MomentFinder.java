package evenfall.fusion.landing;

import evenfall.fusion.alignment.Median;
import evenfall.fusion.event.Event;
import evenfall.fusion.posture.Motion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import org.jspecify.annotations.Nullable;

/** Finds the moments of one landing in the pelvis's motion, to a fraction of a sample where the signal allows. */
final class MomentFinder {

    /** Force on the ground is told from ringing of the strap by this much above flight, m/s². */
    static final double CONTACT_RISE = 0.35 * Gravity.STANDARD;

    /** So long after first touch the force of simulated feet has risen by that, s. */
    static final double CONTACT_RISE_S = 0.003;

    /** Straight lines between samples pass that level earlier by so much of an interval; on simulated feet at 100 to 400 Hz. */
    private static final double EARLIER_INTERVALS = 0.43;

    /** What the force in flight usually is, the last so long tells, s. */
    private static final double BEFORE_CONTACT_S = 0.05;
    /** Within so long, s, and so many samples at least, legs in flight raise the force by less. */
    private static final double LATELY_S = 0.015;

    private static final int LATELY_SAMPLES = 3;
    /** So long after contact, s, the ground carries the weight at least. */
    private static final double CARRIED_S = 0.06;

    /** The event's contact is smoothed and comes late by less than this, s; */
    private static final double SMOOTHED_CONTACT_S = 0.12;
    /** a gap that hides it begins at most so much before the event's contact, s. */
    private static final double HIDDEN_CONTACT_S = 0.02;

    /** and takes away more speed than straps ring by, m/s. */
    private static final double HIDDEN_BRAKE_MS = 0.5;

    /** The pelvis is lowest within so long after contact, s. */
    static final double LOWEST_WITHIN_S = 1.0;

    /** Settled ({@link Moments#settledS}) is who within so long after contact (common practice, no source), s, */
    private static final double SETTLED_WITHIN_S = 5.0;
    /** for so long, s, */
    private static final double SETTLED_HOLD_S = 0.3;
    /** moves no faster than this, m/s, */
    private static final double SETTLED_SPEED_MS = 0.05;
    /** and turns no faster, rad/s. */
    private static final double SETTLED_RATE = Math.toRadians(10);

    /** Window of the peak about contact, s. */
    static final double PEAK_BEFORE_S = 0.005;

    static final double PEAK_AFTER_S = 0.25;

    private final Motion motion;
    private final Event event;
    private final double untilS;
    private final Vector3 gyroBias;

    MomentFinder(Motion motion, Event event, double untilS, Vector3 gyroBias) {
        this.motion = motion;
        this.event = event;
        this.untilS = untilS;
        this.gyroBias = gyroBias;
    }

    Moments find() {
        double contact = contact();
        double peak = motion.time(peak(motion, contact));
        Double takeoff = TakeoffFinder.find(motion, contact);
        Double settled = settled(contact);
        return new Moments(takeoff, contact, peak, lowest(contact, settled), settled);
    }

    /** The first rise of the vertical force out of flight; one that a gap hides goes before what rings earlier in flight. */
    private double contact() {
        int last = motion.indexOfStamp(event.peakS());
        for (int i = Math.max(1, motion.indexOfStamp(event.contactS() - HIDDEN_CONTACT_S)); i <= last; i++) {
            if (endsGap(i) && (rises(i) || brakes(i))) {
                int seen = lastingRise(i - 1);
                return rise(seen < 0 ? i : seen);
            }
        }
        for (int i = Math.max(1, motion.indexOfStamp(event.contactS() - SMOOTHED_CONTACT_S)); i <= last; i++) {
            if (rises(i) && carries(i)) {
                return rise(i);
            }
        }
        return event.contactS();
    }

    /** The contact that a rise up to a sample tells. */
    private double rise(int i) {
        if (endsGap(i)) {
            return HiddenContact.in(motion, i).contactS();
        }
        double level = usualBefore(i) + CONTACT_RISE;
        int first = i;
        while (first > 1 && motion.verticalForce(first - 1) > level) {
            first--;
        }
        return motion.passes(first, level) - contactLag(motion.time(first) - motion.time(first - 1));
    }

    private boolean endsGap(int i) {
        return HiddenContact.gapLength(motion, motion.time(i - 1)) > 0;
    }

    /** The sample of the first rise that is not rung back until the last sample before a gap; -1 if there is none. */
    private int lastingRise(int last) {
        int found = -1;
        double least = motion.verticalForce(last);
        for (int j = last; j > 0 && motion.time(last) - motion.time(j) < BEFORE_CONTACT_S; j--) {
            least = Math.min(least, motion.verticalForce(j));
            if (rises(j) && least > forceBefore(j) + CONTACT_RISE) {
                found = j;
            }
        }
        return found;
    }

    /** Whether the gap before a sample begins in flight and takes away more speed than straps ring by. */
    private boolean brakes(int i) {
        double fallen = Gravity.STANDARD * (motion.time(i) - motion.time(i - 1));
        return motion.verticalForce(i - 1) <= forceBefore(i) + CONTACT_RISE
                && motion.speed(i).z() - motion.speed(i - 1).z() + fallen > HIDDEN_BRAKE_MS;
    }

    /** Whether the ground carries the weight soon after: legs that reach down raise the force as well, but by less. */
    private boolean carries(int i) {
        for (int k = i; k < motion.size() && motion.time(k) - motion.time(i) <= CARRIED_S; k++) {
            if (motion.verticalForce(k) > Gravity.STANDARD) {
                return true;
            }
        }
        return false;
    }

    private boolean rises(int i) {
        double level = forceBefore(i) + CONTACT_RISE;
        return motion.verticalForce(i) > level && motion.verticalForce(i - 1) <= level;
    }

    /**
     * From first touch until the force has risen by the level, less what straight lines between samples add: found on
     * simulated feet at 100 to 400 Hz. A line across a lost sample adds more.
     */
    private static double contactLag(double stepS) {
        return CONTACT_RISE_S - EARLIER_INTERVALS * stepS;
    }

    /** What the force in flight came to by a sample: legs that reach down raise it slowly. */
    private double forceBefore(int i) {
        int lately = Math.max(0, Math.min(i - LATELY_SAMPLES, motion.indexAt(motion.time(i) - LATELY_S) + 1));
        return Math.max(usualBefore(i), median(lately, i));
    }

    /** What the force in flight is before a sample. */
    private double usualBefore(int i) {
        return median(Math.min(i - 1, motion.indexAt(motion.time(i) - BEFORE_CONTACT_S) + 1), i);
    }

    private double median(int from, int to) {
        double[] values = new double[to - from];
        for (int k = from; k < to; k++) {
            values[k - from] = motion.verticalForce(k);
        }
        return Median.sorting(values);
    }

    /** Sample of the largest resultant about a contact. */
    static int peak(Motion motion, double contactS) {
        int best = Math.min(motion.size() - 1, motion.indexAt(contactS - PEAK_BEFORE_S) + 1);
        for (int i = best; i < motion.size() && motion.time(i) <= contactS + PEAK_AFTER_S; i++) {
            if (motion.stream().resultant(motion.from() + i) > motion.stream().resultant(motion.from() + best)) {
                best = i;
            }
        }
        return best;
    }

    private @Nullable Double settled(double contact) {
        double end = contact + SETTLED_WITHIN_S;
        int last = motion.indexOfStamp(untilS);
        int start = -1;
        for (int i = motion.indexAt(contact) + 1; i <= last; i++) {
            boolean still = motion.speed(i).norm() < SETTLED_SPEED_MS && rate(i) < SETTLED_RATE;
            start = still ? start < 0 ? i : start : -1;
            if (start < 0 && motion.time(i) > end) {
                return null;
            }
            if (start >= 0 && motion.time(i) - motion.time(start) >= SETTLED_HOLD_S) {
                return motion.time(start) <= end ? motion.time(start) : null;
            }
        }
        return null;
    }

    private double rate(int i) {
        int k = motion.from() + i;
        SensorStream s = motion.stream();
        double x = s.gx(k) - gyroBias.x();
        double y = s.gy(k) - gyroBias.y();
        double z = s.gz(k) - gyroBias.z();
        return Vector3.length(x, y, z);
    }

    /** The last sample at which a pelvis that does not come to rest before may be lowest. */
    static int lastSinking(Motion motion, double contactS, double untilS) {
        return Math.min(motion.indexAt(contactS + LOWEST_WITHIN_S), motion.indexOfStamp(untilS));
    }

    private @Nullable Double lowest(double contact, @Nullable Double settled) {
        int sinking = lastSinking(motion, contact, untilS);
        int last = settled == null ? sinking : Math.min(sinking, motion.indexAt(settled));
        int best = motion.indexAt(contact) + 1;
        if (best > last) {
            return null;
        }
        for (int i = best; i <= last; i++) {
            if (motion.place(i).z() < motion.place(best).z()) {
                best = i;
            }
        }
        if (motion.from() + best == motion.stream().size() - 1) {
            // Still sinking when the recording ends: how far is not known.
            return null;
        }
        return motion.place(best).z() < motion.placeAt(contact).z() ? motion.time(best) : null;
    }
}
