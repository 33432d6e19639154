package evenfall.fusion.event;

import evenfall.fusion.filtering.Butterworth;
import evenfall.fusion.filtering.ZeroPhase;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SensorAxes;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gap;
import evenfall.ingest.recording.SampleCursor;
import evenfall.ingest.recording.SensorStream;
import java.util.BitSet;

/**
 * A stretch of a stream seen along the vertical: force, speed, and where the person stands still.
 *
 * <p>The level (what standing reads) is the mean vertical force over some seconds around each sample: between rests
 * the mean acceleration is nothing, so that bias, scale and a slightly wrong orientation fall out. Speed is therefore
 * good over a second or two and means nothing over minutes. Indices count from the start of the stretch.
 */
final class VerticalMotion {

    /** Half the window of the level, s: several steps or a whole landing between two rests fit in. */
    private static final double LEVEL_WITHIN = 4;

    /** Above the body's own movement, below the strap's ringing at 20 to 40 Hz. */
    private static final double SMOOTHING_HZ = 15;

    /** At low rates the smoothing stays below this share of the rate. */
    private static final double MOST_OF_RATE = 0.4;

    /** A level below a tenth of gravity is no standing weight, m/s²: a sensor in free fall, or dead. */
    private static final double LEAST_LEVEL = 1;

    /** Standing still is a force within this share of the level, */
    private static final double QUIET_FORCE = 0.15;

    /** a turn rate below this, rad/s (a person standing sways below 0.3, walking pelvises turn at 1 and more), */
    private static final double QUIET_TURN = 0.8;

    /** and both for this long, s. */
    private static final double QUIET_FOR = 0.3;

    /** What the feet must leave uncarried before a gap, as a share of the level, for a contact in it to be looked for. */
    private static final double LIGHT_SHARE = 0.5;

    /** Rests further apart than this say nothing of what happened in a gap between them, s: the level drifts. */
    private static final double RESTS_APART = 5;

    private final SensorStream stream;
    private final OrientationTrack track;
    private final int from;
    /** The samples after which time is missing. */
    private final BitSet gaps;

    private final double[] force;
    private final double[] speed;
    private final BitSet quiet;

    /** The samples {@code from} (inclusive) to {@code to} (exclusive) of {@code stream}, with no long gap in them. */
    VerticalMotion(SensorStream stream, OrientationTrack track, int from, int to) {
        this.stream = stream;
        this.track = track;
        this.from = from;
        this.gaps = gaps(stream, from, to);
        double[] vertical = verticalForces(to - from);
        double[] level = level(vertical);
        double rate = stream.rateHz();
        force = ZeroPhase.filter(Butterworth.lowPass(Math.min(SMOOTHING_HZ, MOST_OF_RATE * rate), rate), vertical);
        speed = speeds(vertical, level);
        for (int i = 0; i < force.length; i++) {
            force[i] /= level[i];
        }
        quiet = quiet();
        if (!gaps.isEmpty()) {
            mendGaps();
            dipIntoGaps(vertical, level);
        }
    }

    /** Whether time is missing between a sample and the next. */
    boolean gapAfter(int i) {
        return gaps.get(i);
    }

    private static BitSet gaps(SensorStream stream, int from, int to) {
        BitSet gaps = new BitSet(to - from);
        for (Gap gap : stream.gaps()) {
            if (gap.before() >= from && gap.before() + 1 < to) {
                gaps.set(gap.before() - from);
            }
        }
        return gaps;
    }

    private double[] verticalForces(int n) {
        double[] vertical = new double[n];
        SampleCursor sample = stream.cursor();
        for (int i = 0; i < n; i++) {
            sample.goTo(from + i);
            vertical[i] = verticalForce(sample, track.at(from + i));
        }
        return vertical;
    }

    /** Samples are even between gaps, whatever their stamps: several may come at once. */
    private double[] speeds(double[] vertical, double[] level) {
        double[] speeds = new double[vertical.length];
        double interval = 1 / stream.rateHz();
        for (int i = 1; i < speeds.length; i++) {
            double mean = (vertical[i] - level[i] + vertical[i - 1] - level[i - 1]) / 2;
            speeds[i] = speeds[i - 1] + mean * (gapAfter(i - 1) ? time(i) - time(i - 1) : interval);
        }
        return speeds;
    }

    /**
     * A gap that begins light and ends loaded hides a contact, and with it the fastest moment. Of a force that stays as
     * light as before until contact and is as after it from there on, the change of speed over the gap says when contact
     * was. The first sample after the gap then stands for that moment.
     */
    private void dipIntoGaps(double[] vertical, double[] level) {
        for (int i = 1; i < size(); i++) {
            double pause = time(i) - time(i - 1);
            double falling = level[i - 1] - vertical[i - 1];
            double braking = vertical[i] - level[i];
            if (gapAfter(i - 1) && falling > LIGHT_SHARE * level[i] && braking > 0) {
                double change = speed[i] - speed[i - 1];
                double untilContact = (braking * pause - change) / (braking + falling);
                double fastest = speed[i - 1] - falling * Math.max(0, Math.min(pause, untilContact));
                speed[i] = Math.min(speed[i], fastest);
            }
        }
    }

    /**
     * Speed is nothing at the rests before and after; what the integral says instead was done in the gaps between them, by
     * each in proportion to its length. A gap may hide a whole impact.
     */
    private void mendGaps() {
        double[] jumps = new double[size()];
        int before = -1;
        double hidden = 0;
        for (int i = 1; i < size(); i++) {
            if (quiet.get(i)) {
                if (hidden > 0 && before >= 0 && time(i) - time(before) <= RESTS_APART) {
                    double off = (speed[i] - speed[before]) / hidden;
                    for (int k = before + 1; k <= i; k++) {
                        jumps[k] = gapAfter(k - 1) ? -off * (time(k) - time(k - 1)) : 0;
                    }
                }
                before = i;
                hidden = 0;
            } else if (gapAfter(i - 1)) {
                hidden += time(i) - time(i - 1);
            }
        }
        double shift = 0;
        for (int i = 0; i < size(); i++) {
            shift += jumps[i];
            speed[i] += shift;
        }
    }

    int size() {
        return speed.length;
    }

    /** Time on the stream's clock, s. */
    double time(int i) {
        return stream.time(from + i);
    }

    /** Vertical force, smoothed, as a share of the level. */
    double force(int i) {
        return force[i];
    }

    /** Vertical speed, m/s, from an arbitrary zero. */
    double speed(int i) {
        return speed[i];
    }

    /** Resultant of the specific force as recorded, m/s². */
    double resultant(int i) {
        return stream.resultant(from + i);
    }

    /** The last sample of standing still at or before {@code i}; -1 if there is none. */
    int restAtOrBefore(int i) {
        return quiet.previousSetBit(i);
    }

    /** The first sample of standing still at or after {@code i}; -1 if there is none. */
    int restAtOrAfter(int i) {
        return quiet.nextSetBit(i);
    }

    /** The sample {@code seconds} after (before, if negative) {@code i} by the usual interval, within the stretch. */
    int shifted(int i, double seconds) {
        return (int) Math.max(0, Math.min(size() - 1, i + Math.round(seconds * stream.rateHz())));
    }

    /** The first (if several) sample of greatest speed from {@code a} to {@code b}, both inclusive. */
    int fastestUp(int a, int b) {
        int best = a;
        for (int i = a + 1; i <= b; i++) {
            if (speed[i] > speed[best]) {
                best = i;
            }
        }
        return best;
    }

    /**
     * The specific force summed over the samples {@code a} to {@code b}, both inclusive, in the sensor's axes: over a
     * rest, or over a second or two of steps, it points up whatever the orientation says.
     */
    Vector3 force(int a, int b) {
        return SensorAxes.forceSum(stream, from + a, from + b + 1);
    }

    /** Up in the sensor's axes, summed over the samples {@code a} to {@code b}, both inclusive. */
    Vector3 upward(int a, int b) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = a; i <= b; i++) {
            Quaternion q = track.at(from + i);
            x += upX(q);
            y += upY(q);
            z += upZ(q);
        }
        return new Vector3(x, y, z);
    }

    /** The largest angle between {@code stance} and up at the samples {@code a} to {@code b}, rad. */
    double largestAngle(Vector3 stance, int a, int b) {
        double least = 1;
        double length = stance.norm();
        for (int i = a; i <= b; i++) {
            Quaternion q = track.at(from + i);
            double dot = stance.x() * upX(q) + stance.y() * upY(q) + stance.z() * upZ(q);
            least = Math.min(least, dot / length);
        }
        return Math.acos(Math.max(-1, least));
    }

    private static double verticalForce(SampleCursor sample, Quaternion q) {
        return upX(q) * sample.force(0) + upY(q) * sample.force(1) + upZ(q) * sample.force(2);
    }

    private static double upX(Quaternion q) {
        return 2 * (q.x() * q.z() - q.w() * q.y());
    }

    private static double upY(Quaternion q) {
        return 2 * (q.y() * q.z() + q.w() * q.x());
    }

    private static double upZ(Quaternion q) {
        return 1 - 2 * (q.x() * q.x() + q.y() * q.y());
    }

    private double[] level(double[] vertical) {
        int n = vertical.length;
        int half = (int) Math.round(LEVEL_WITHIN * stream.rateHz());
        double[] level = new double[n];
        double sum = 0;
        int a = 0;
        int b = 0;
        for (int i = 0; i < n; i++) {
            for (; b < n && b <= i + half; b++) {
                sum += vertical[b];
            }
            for (; a < i - half; a++) {
                sum -= vertical[a];
            }
            level[i] = Math.max(sum / (b - a), LEAST_LEVEL);
        }
        return level;
    }

    private BitSet quiet() {
        int n = size();
        int half = (int) Math.round(QUIET_FOR / 2 * stream.rateHz());
        BitSet quiet = new BitSet(n);
        int lastUnrest = -half - 1;
        SampleCursor sample = stream.cursor();
        for (int i = 0; i < n + half; i++) {
            if (i < n) {
                sample.goTo(from + i);
                lastUnrest = isCalm(sample, force[i]) ? lastUnrest : i;
            }
            int centre = i - half;
            if (centre >= 0 && lastUnrest < centre - half) {
                quiet.set(centre);
            }
        }
        return quiet;
    }

    private static boolean isCalm(SampleCursor sample, double force) {
        double x = sample.rate(0);
        double y = sample.rate(1);
        double z = sample.rate(2);
        return Math.abs(force - 1) <= QUIET_FORCE && x * x + y * y + z * z <= QUIET_TURN * QUIET_TURN;
    }
}
