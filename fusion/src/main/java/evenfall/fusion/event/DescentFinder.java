package evenfall.fusion.event;

import evenfall.fusion.event.SpeedReversals.WayDown;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import java.util.ArrayList;
import java.util.List;

/** Finds and measures the descents in a stretch of vertical motion. */
final class DescentFinder {

    /** A way down begins at most this long before its fastest moment, s: a fall of 1.5 m takes 0.55. */
    private static final double LOOK_BACK = 0.8;

    /** A brake ends at most this long after the fastest moment, s. */
    private static final double BRAKE_WITHIN = 0.5;

    /** Below this share of the weight the feet carry little. */
    private static final double LIGHT_FORCE = 0.5;

    /** Lightness may be interrupted this long, s: a strap rings in flight too. */
    private static final double LIGHT_BREAK = 0.06;

    /** A rest further away than this says nothing about speed, s. */
    private static final double REST_NEAR = 2.5;

    /** A descent that begins this soon after rest begins from rest, s. */
    private static final double FROM_REST = 0.35;

    /** From one that rings within a larger brake, the larger differs by this factor. */
    private static final double RINGING = 1.5;

    /** What rings within a descent is among so many before and after it: common practice, no source. */
    private static final int NEIGHBOURS = 3;

    /** The rest after is looked for from so long after the fastest moment, s: a brake has then at least begun. */
    private static final double AFTER_TURN = 0.05;

    /** The force is largest at most so long after the fastest moment, s; as the peak of a landing is after its contact. */
    private static final double PEAK_WITHIN = 0.25;

    /** A pelvis swings until so long after the fastest moment, s: as long as angles of a landing are taken. */
    private static final double SWING_WITHIN = 0.6;

    /** A stance is averaged over so much about the middle of a rest. */
    private static final Stretch STANCE = new Stretch(-0.15, 0.15);

    /** Without a rest near, up before is taken just before the way down, and after once most landings are stopped: */
    private static final Stretch UP_BEFORE = new Stretch(-0.3, 0);

    private static final Stretch UP_AFTER = new Stretch(0.8, 1.5);

    /** the mean force of somebody who moves needs a second or two to point up. All four common practice, no source. */
    private static final Stretch FORCE_BEFORE = new Stretch(-2, -0.2);

    private static final Stretch FORCE_AFTER = new Stretch(0.8, 2);

    /** Share of the brake over which its rate is taken: who lands softly sinks on, slowly, after a first hard half. */
    private static final double BRAKE_SHARE = 0.5;

    /** Share of the brake after which downward speed counts as stopped: the rest is standing up again, or drift. */
    private static final double STOPPED_SHARE = 0.95;

    /**
     * A stretch of time about a sample.
     *
     * @param first its start, s after the sample
     * @param last its end likewise
     */
    private record Stretch(double first, double last) {}

    private final VerticalMotion motion;

    DescentFinder(VerticalMotion motion) {
        this.motion = motion;
    }

    /** All descents with their measures, in order; what rings within the brake of a larger one is left out. */
    List<Descent> find() {
        List<WayDown> ways = SpeedReversals.find(motion);
        List<Descent> all = new ArrayList<>();
        for (WayDown way : ways) {
            all.add(measure(way));
        }
        List<Descent> kept = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (!ringsInAnother(all, i)) {
                kept.add(all.get(i));
            }
        }
        return kept;
    }

    private static boolean ringsInAnother(List<Descent> all, int i) {
        Descent one = all.get(i);
        for (int k = Math.max(0, i - NEIGHBOURS); k <= Math.min(all.size() - 1, i + NEIGHBOURS); k++) {
            Descent other = all.get(k);
            if (k != i
                    && other.start() <= one.turn()
                    && one.turn() <= other.braked()
                    && other.fallenSinceCrest() > RINGING * one.fallenSinceCrest()
                    && other.strength() > one.strength()) {
                return true;
            }
        }
        return false;
    }

    private Descent measure(WayDown way) {
        int turn = way.trough();
        int crest = motion.fastestUp(motion.shifted(turn, -LOOK_BACK), turn);
        int rest = motion.restAtOrBefore(turn);
        int start = Math.max(crest, rest);
        int end = motion.fastestUp(turn, motion.shifted(turn, BRAKE_WITHIN));
        int restAfter = motion.restAtOrAfter(motion.shifted(turn, AFTER_TURN));
        double sinceRest = rest < 0 ? Double.POSITIVE_INFINITY : motion.time(start) - motion.time(rest);
        double untilRest = restAfter < 0 ? Double.POSITIVE_INFINITY : motion.time(restAfter) - motion.time(turn);
        boolean before = sinceRest < REST_NEAR;
        boolean after = untilRest < REST_NEAR;
        Vector3 upBefore = before ? upward(rest, STANCE) : upward(start, UP_BEFORE);
        Vector3 upAfter = after ? upward(restAfter, STANCE) : upward(turn, UP_AFTER);
        Vector3 forceBefore = before ? force(rest, STANCE) : force(start, FORCE_BEFORE);
        Vector3 forceAfter = after ? force(restAfter, STANCE) : force(turn, FORCE_AFTER);
        double lowest = motion.speed(turn);
        double brake = motion.speed(end) - lowest;
        int takeoff = firstLight(start, turn);
        int contact = lastLight(start, turn);
        int peak = peak(Math.min(contact, turn), motion.shifted(turn, PEAK_WITHIN));
        return new Descent(
                motion.time(start),
                motion.time(takeoff),
                motion.time(contact),
                motion.time(peak),
                motion.time(turn),
                motion.time(braked(turn, end, STOPPED_SHARE)),
                motion.resultant(peak),
                motion.speed(start) - lowest,
                motion.speed(way.crest()) - lowest,
                brake,
                brakeRate(turn, end),
                light(start, turn),
                before ? motion.speed(start) - motion.speed(rest) : Double.NaN,
                before ? motion.speed(rest) - lowest : Double.NaN,
                after ? motion.speed(restAfter) - lowest : Double.NaN,
                sinceRest,
                untilRest,
                Math.min(upBefore.angleTo(upAfter), forceBefore.angleTo(forceAfter)),
                motion.largestAngle(upBefore, start, motion.shifted(turn, SWING_WITHIN)),
                rest >= 0 && motion.time(crest) - motion.time(rest) < FROM_REST);
    }

    private Vector3 upward(int index, Stretch about) {
        return motion.upward(motion.shifted(index, about.first()), motion.shifted(index, about.last()));
    }

    private Vector3 force(int index, Stretch about) {
        return motion.force(motion.shifted(index, about.first()), motion.shifted(index, about.last()));
    }

    /**
     * How long the feet carried little. Of a gap that is told in two ways: as light as the samples are in general, or as light as the
     * last sample before it is by itself, for smoothing brings in what comes after; it is the longer of the two.
     */
    private double light(int start, int turn) {
        int count = 0;
        double time = 0;
        for (int i = start; i <= turn; i++) {
            boolean light = motion.force(i) < LIGHT_FORCE;
            count += light ? 1 : 0;
            if (i < turn && (light || beginsLightGap(i))) {
                time += motion.time(i + 1) - motion.time(i);
            }
        }
        double mean = (motion.time(turn) - motion.time(start)) / Math.max(1, turn - start);
        return Math.max(time, count * mean);
    }

    private boolean beginsLightGap(int i) {
        return motion.gapAfter(i) && motion.resultant(i) < LIGHT_FORCE * Gravity.STANDARD;
    }

    /** The last light sample before the turn; the turn if there is none. */
    private int lastLight(int start, int turn) {
        for (int i = turn; i >= start; i--) {
            if (motion.force(i) < LIGHT_FORCE) {
                return i;
            }
        }
        return turn;
    }

    /** Where the lightness that ends last begins; the start if there is none. */
    private int firstLight(int start, int turn) {
        int first = lastLight(start, turn);
        if (first == turn) {
            return start;
        }
        for (int i = first; i >= start && motion.time(first) - motion.time(i) <= LIGHT_BREAK; i--) {
            if (motion.force(i) < LIGHT_FORCE) {
                first = i;
            }
        }
        return first;
    }

    private int peak(int a, int b) {
        int best = a;
        for (int i = a + 1; i <= b; i++) {
            if (motion.resultant(i) > motion.resultant(best)) {
                best = i;
            }
        }
        return best;
    }

    private double brakeRate(int turn, int end) {
        int i = braked(turn, end, BRAKE_SHARE);
        return i == turn ? 0 : (motion.speed(i) - motion.speed(turn)) / (motion.time(i) - motion.time(turn));
    }

    /** The first sample by which {@code share} of the brake from {@code turn} to {@code end} is done. */
    private int braked(int turn, int end, double share) {
        double part = share * (motion.speed(end) - motion.speed(turn));
        int i = turn;
        while (i < end && motion.speed(i) - motion.speed(turn) < part) {
            i++;
        }
        return i;
    }
}
