package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Vector3;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Tells whether a strap moved: from some stance on, gravity lies in another direction of the sensor, and stays there. A
 * turn about the vertical leaves no trace in gravity and is not found.
 *
 * <p>A move counts when the median directions before and after lie more than 2.2° and more than five times their scatter
 * apart, at most three stances in ten before it already lie where those after it do, and at most one in six after it is back
 * within half of that. At least three stances over 20 s are needed on each side.
 */
public final class StrapWatch {

    /** Shorter stances tell no move by themselves. */
    private static final double SHORTEST_STANCE_S = 1.2;
    /** So many on either side do. */
    private static final int LEAST_STANCES = 3;
    /** Who landed crookedly may stay so until the next drop; a strap that moved stays longer where it went, s. */
    private static final double LEAST_SPAN_S = 20;

    /** What is no move reaches 1.4° and 2.6 scatters in 45 simulated sessions: a move is an angle of this at least, rad, */
    private static final double LEAST_ANGLE = Math.toRadians(2.2);
    /** and so many scatters. */
    private static final double LEAST_SCATTERS = 5;
    /** Scatter of a person who stands the same way each time is never taken as less, rad. */
    private static final double SCATTER_FLOOR = Math.toRadians(0.4);
    /** Someone who sits or bends is no stance: further than this from the median of all, rad. */
    private static final double NO_STANCE = Math.toRadians(45);

    /** Who bends and stays so for a while is none either: further than this from the median of the stances about it, rad. */
    private static final double NO_STAY = Math.toRadians(10);
    /** Of so many of them, with itself. */
    private static final int ABOUT = 5;

    /** Directions are those of so many stances on either side of a move at most: a strap may move again. */
    private static final int BESIDE = 8;
    /** So many after it are watched for a return, */
    private static final int WATCHED = 40;
    /** to within this part of its angle, */
    private static final double BACK_WITHIN = 0.5;
    /** of which this share may be back. */
    private static final double BACK_SHARE = 0.17;
    /** Of so many before it */
    private static final int RECENT = 16;
    /** this share may have been there already: a trunk may have stayed so after a landing. */
    private static final double THERE_SHARE = 0.3;

    /** A stance is one before or after a move where it lies within this part of it of what those told. */
    private static final double NEAR = 0.3;

    private StrapWatch() {}

    /**
     * One move of a strap, at some moment between two stances.
     *
     * @param fromS end of the last stance before, s on the sensor's clock
     * @param toS start of the first after
     * @param angle how far gravity turned in the sensor, rad
     * @param before median direction of the force before, unit vector in sensor axes
     * @param after median direction of the force after
     */
    public record Move(double fromS, double toS, double angle, Vector3 before, Vector3 after) {

        /** The middle between those stances, s on the sensor's clock. */
        public double atS() {
            return (fromS + toS) / 2;
        }

        /** The same between nearer stances, of which some are too short to tell a move by themselves. */
        private Move between(List<Stance> stances) {
            double from = fromS;
            double to = toS;
            for (Stance stance : stances) {
                if (stance.startS() >= from && stance.endS() <= to) {
                    double old = stance.force().angleTo(before);
                    double now = stance.force().angleTo(after);
                    from = old < NEAR * angle ? stance.endS() : from;
                    to = now < NEAR * angle ? stance.startS() : to;
                }
            }
            return new Move(from, to, angle, before, after);
        }
    }

    /** The moves in order of time; usually none. */
    public static List<Move> find(List<Stance> stances) {
        List<Stance> upright = upright(stances);
        List<Move> moves = new ArrayList<>();
        search(upright, moves);
        moves.sort((a, b) -> Double.compare(a.atS(), b.atS()));
        return moves.stream().map(move -> move.between(stances)).toList();
    }

    private static List<Stance> upright(List<Stance> stances) {
        List<Stance> longer = stances.stream()
                .filter(stance -> stance.lengthS() >= SHORTEST_STANCE_S)
                .toList();
        if (longer.isEmpty()) {
            return longer;
        }
        Vector3 usual = median(longer);
        return steady(longer.stream()
                .filter(stance -> stance.force().angleTo(usual) < NO_STANCE)
                .toList());
    }

    /** Without those whose neighbours stand otherwise: a strap that moved stays where it went. */
    private static List<Stance> steady(List<Stance> stances) {
        List<Stance> steady = new ArrayList<>();
        for (int i = 0; i < stances.size(); i++) {
            int from = Math.max(0, Math.min(i - ABOUT / 2, stances.size() - ABOUT));
            Vector3 about = median(stances.subList(from, Math.min(stances.size(), from + ABOUT)));
            if (stances.get(i).force().angleTo(about) < NO_STAY) {
                steady.add(stances.get(i));
            }
        }
        return steady;
    }

    /** Of the places that may be moves, the one at which two constant directions explain the stances best; then on either side. */
    private static void search(List<Stance> stances, List<Move> moves) {
        int n = stances.size();
        Vector3 total = Vector3.ZERO;
        for (Stance stance : stances) {
            total = total.plus(stance.force().normalised());
        }
        int split = -1;
        Move best = null;
        double most = 0;
        Vector3 sum = Vector3.ZERO;
        for (int k = 1; k < n; k++) {
            sum = sum.plus(stances.get(k - 1).force().normalised());
            Vector3 rest = total.minus(sum);
            double explained = sum.dot(sum) / k + rest.dot(rest) / (n - k);
            Move move = explained > most ? judge(stances, k) : null;
            if (move != null) {
                most = explained;
                best = move;
                split = k;
            }
        }
        if (best != null) {
            moves.add(best);
            search(stances.subList(0, split), moves);
            search(stances.subList(split, n), moves);
        }
    }

    /** Whether stances are enough to tell a direction. */
    private static boolean isTold(List<Stance> stances) {
        return stances.size() >= LEAST_STANCES
                && stances.get(stances.size() - 1).endS() - stances.get(0).startS() >= LEAST_SPAN_S;
    }

    /** The move before a stance, or null if there was none. */
    private static @Nullable Move judge(List<Stance> stances, int split) {
        if (!isTold(stances.subList(0, split)) || !isTold(stances.subList(split, stances.size()))) {
            return null;
        }
        List<Stance> old = stances.subList(Math.max(0, split - BESIDE), split);
        List<Stance> recent = stances.subList(Math.max(0, split - RECENT), split);
        List<Stance> later = stances.subList(split, Math.min(stances.size(), split + BESIDE));
        List<Stance> watched = stances.subList(split, Math.min(stances.size(), split + WATCHED));
        Vector3 before = median(old);
        Vector3 after = median(later);
        double angle = before.angleTo(after);
        double scatter = Math.max(SCATTER_FLOOR, Math.max(scatter(old, before), scatter(later, after)));
        if (angle < LEAST_ANGLE
                || angle < LEAST_SCATTERS * scatter
                || near(after, recent, NEAR * angle) > THERE_SHARE
                || near(before, watched, BACK_WITHIN * angle) > BACK_SHARE) {
            return null;
        }
        return new Move(old.get(old.size() - 1).endS(), later.get(0).startS(), angle, before, after);
    }

    /** Share of stances that lie nearer to a direction than an angle. */
    private static double near(Vector3 direction, List<Stance> stances, double angle) {
        long near = stances.stream()
                .filter(stance -> stance.force().angleTo(direction) < angle)
                .count();
        return (double) near / stances.size();
    }

    private static double scatter(List<Stance> stances, Vector3 middle) {
        return median(stances, stance -> stance.force().angleTo(middle));
    }

    /** Median of each component of the directions, made a unit vector. */
    private static Vector3 median(List<Stance> stances) {
        return new Vector3(
                        median(stances, s -> s.force().normalised().x()),
                        median(stances, s -> s.force().normalised().y()),
                        median(stances, s -> s.force().normalised().z()))
                .normalised();
    }

    private static double median(List<Stance> stances, ToDoubleFunction<Stance> value) {
        return Median.of(stances.stream().mapToDouble(value).toArray());
    }
}
