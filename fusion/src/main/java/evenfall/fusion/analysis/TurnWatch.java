package evenfall.fusion.analysis;

/**
 * Tells whether a sensor was turned about the vertical between two landings. Gravity does not show it, but from then on
 * all take-offs seem to go another way. Where both sensors show the same step, the person went another way instead.
 */
final class TurnWatch {

    private static final int LEAST_EACH_SIDE = 2;
    private static final double LEAST_STEP_DEG = 6;
    /** People change the way they go by more, for another exercise. */
    private static final double LARGEST_STEP_DEG = 40;

    private static final double LEAST_T = 5;
    /** The same of two landings, whose scatter says little. */
    private static final double LEAST_T_OF_TWO = 7;
    /** Take-offs never scatter less than this, deg. */
    private static final double SCATTER_FLOOR_DEG = 1.5;
    /** The other sensor stays where it was within this part of the step. */
    private static final double SHARED_PART = 0.4;

    private TurnWatch() {}

    /**
     * The landing before which the sensor was turned, or -1.
     *
     * @param ownDeg direction of each take-off against the sensor, deg; NaN where not known
     * @param otherDeg the same of the other sensor, or all NaN
     * @param from first landing looked at
     * @param to after the last one
     */
    static int find(double[] ownDeg, double[] otherDeg, int from, int to) {
        int best = -1;
        double most = 0;
        for (int split = from + 1; split < to; split++) {
            Step own = Step.of(ownDeg, from, split, to);
            if (own.fewest() < LEAST_EACH_SIDE
                    || Math.abs(own.deg()) < LEAST_STEP_DEG
                    || Math.abs(own.deg()) > LARGEST_STEP_DEG) {
                continue;
            }
            Step other = Step.of(otherDeg, from, split, to);
            boolean shared = other.fewest() > 0
                    && Math.abs(other.deg()) > SHARED_PART * Math.abs(own.deg())
                    && other.deg() * own.deg() > 0;
            double least = own.fewest() > LEAST_EACH_SIDE ? LEAST_T : LEAST_T_OF_TWO;
            if (own.t() > Math.max(least, most) && !shared) {
                most = own.t();
                best = split;
            }
        }
        return best;
    }

    /** How far the directions after a split are turned to the left of those before, deg. */
    static double step(double[] deg, int from, int split, int to) {
        return Step.of(deg, from, split, to).deg();
    }

    /**
     * Mean after a split less mean before it.
     *
     * @param deg the difference
     * @param t in standard errors
     * @param fewest values on the side that has fewer
     */
    private record Step(double deg, double t, int fewest) {

        static Step of(double[] deg, int from, int split, int to) {
            Stretch before = Stretch.of(deg, from, split);
            Stretch after = Stretch.of(deg, split, to);
            double step = after.mean() - before.mean();
            double squares = before.squares() + after.squares();
            double freedom = Math.max(1, before.count() + after.count() - 2);
            double scatter = Math.max(SCATTER_FLOOR_DEG, Math.sqrt(squares / freedom));
            double t = Math.abs(step) / (scatter * Math.sqrt(1.0 / before.count() + 1.0 / after.count()));
            return new Step(step, t, Math.min(before.count(), after.count()));
        }
    }

    /**
     * The directions of a stretch of landings.
     *
     * @param mean of those known; 0 without any
     * @param count how many are known
     * @param squares sum of their squared distances from the mean
     */
    private record Stretch(double mean, int count, double squares) {

        static Stretch of(double[] deg, int from, int to) {
            double sum = 0;
            int n = 0;
            for (int k = from; k < to; k++) {
                if (!Double.isNaN(deg[k])) {
                    sum += deg[k];
                    n++;
                }
            }
            double mean = n > 0 ? sum / n : 0;
            double squares = 0;
            for (int k = from; k < to; k++) {
                if (!Double.isNaN(deg[k])) {
                    squares += (deg[k] - mean) * (deg[k] - mean);
                }
            }
            return new Stretch(mean, n, squares);
        }
    }
}
