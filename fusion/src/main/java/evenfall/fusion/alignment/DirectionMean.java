package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Vector3;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The mean of directions of which most agree; those far from it are left out.
 *
 * @param direction their sum, any length
 * @param squaresDeg sum of the squared angles between it and those that count, deg²
 * @param count how many count
 */
public record DirectionMean(Vector3 direction, double squaresDeg, int count) {

    /** One direction has no mean. */
    private static final int LEAST = 2;
    /** Which count and their mean follow from one another so many times: common practice, no source. */
    private static final int ROUNDS = 3;
    /** One further off went another way, rad; common practice, no source. */
    private static final double FAR = Math.toRadians(25);

    /** The mean of unit vectors, or null where there are fewer than two or fewer than half agree. */
    public static @Nullable DirectionMean of(List<Vector3> directions) {
        if (directions.size() < LEAST) {
            return null;
        }
        Vector3 middle = sum(directions);
        List<Vector3> kept = directions;
        for (int round = 0; round < ROUNDS; round++) {
            Vector3 now = middle;
            kept = directions.stream().filter(one -> one.angleTo(now) < FAR).toList();
            if (kept.size() < Math.max(LEAST, directions.size() / 2)) {
                return null;
            }
            middle = sum(kept);
        }
        double squares = 0;
        for (Vector3 one : kept) {
            double off = Math.toDegrees(one.angleTo(middle));
            squares += off * off;
        }
        return new DirectionMean(middle, squares, kept.size());
    }

    /** Whether it lies about where another direction does, within the angle up to which single ones count. */
    public boolean agreesWith(Vector3 other) {
        return direction.angleTo(other) < FAR;
    }

    private static Vector3 sum(List<Vector3> directions) {
        return directions.stream().reduce(Vector3.ZERO, Vector3::plus);
    }

    /**
     * One standard deviation of the mean, deg.
     *
     * @param usualDeg one standard deviation of such directions, deg
     * @param floorDeg what all of them err by together, deg
     */
    public double sigmaDeg(double usualDeg, double floorDeg) {
        return Math.hypot(Math.sqrt(Straying.variance(squaresDeg, count, usualDeg) / count), floorDeg);
    }
}
