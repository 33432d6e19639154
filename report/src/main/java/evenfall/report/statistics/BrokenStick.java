package evenfall.report.statistics;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * A line that bends once (Muggeo 2003, Statistics in Medicine 22:3055): from when something began to change.
 *
 * <p>Where the bend was looked for, the ordinary F test calls too many (Davies 1987, Biometrika 74:33). How much better than a
 * straight line a bent one fits therefore is held against as many straight lines with normal scatter, drawn at the same times
 * and searched alike (Barnard 1963, JRSS B 25:294); that share depends neither on the line nor on the size of the scatter. The
 * draws are the same each time.
 *
 * @param at when it bends
 * @param level at time 0, of the line before the bend
 * @param before slope before it
 * @param after slope after it
 * @param squares sum of squares that is left
 * @param chance how often a straight line would seem to bend as much, 0 to 1
 */
public record BrokenStick(double at, double level, double before, double after, double squares, double chance) {

    /** Fewer points on either side tell no slope. */
    private static final int LEAST_A_SIDE = 3;

    private static final int PLACES = 60;
    private static final int DRAWS = 1999;
    private static final long SEED = 20260302;
    private static final int NARROWINGS = 60;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /**
     * Fits.
     *
     * @param time of each point, in order
     * @param value of each point
     * @return null with fewer than three points on a side, or where nothing scatters about a straight line
     */
    public static @Nullable BrokenStick of(double[] time, double[] value) {
        int n = time.length;
        if (n < 2 * LEAST_A_SIDE || !(time[n - LEAST_A_SIDE] > time[LEAST_A_SIDE - 1])) {
            return null;
        }
        double first = time[LEAST_A_SIDE - 1];
        double step = (time[n - LEAST_A_SIDE] - first) / PLACES;
        double[][] bends = new double[PLACES + 1][];
        for (int k = 0; k <= PLACES; k++) {
            bends[k] = bend(time, first + k * step);
        }
        int best = best(bends, value);
        double explained = share(time, value, bends[best]);
        if (!(explained >= 0)) {
            return null;
        }
        double at = narrowed(time, value, first + (best - 1) * step, first + (best + 1) * step);
        at = Math.max(first, Math.min(time[n - LEAST_A_SIDE], at));
        return fitted(time, value, at, chance(time, bends, explained));
    }

    /** What of a bend at that time no straight line holds, of length 1. */
    private static double[] bend(double[] time, double at) {
        double[] hinge = Arrays.stream(time).map(t -> Math.max(0, t - at)).toArray();
        double[] own = withoutLine(time, hinge);
        double length = Math.sqrt(Columns.dot(own, own));
        return Arrays.stream(own).map(v -> length > 0 ? v / length : 0).toArray();
    }

    private static int best(double[][] bends, double[] value) {
        int best = 0;
        double most = -1;
        for (int k = 0; k < bends.length; k++) {
            double along = Columns.dot(bends[k], value);
            if (along * along > most) {
                most = along * along;
                best = k;
            }
        }
        return best;
    }

    /** Of what a straight line leaves, the share a bend explains; not a number where a straight line leaves nothing. */
    private static double share(double[] time, double[] value, double[] bend) {
        double[] left = withoutLine(time, value);
        double along = Columns.dot(bend, value);
        double squares = Columns.dot(left, left);
        double size = Columns.dot(value, value);
        return squares > 1e-18 * size ? along * along / squares : Double.NaN;
    }

    private static double chance(double[] time, double[][] bends, double explained) {
        SplittableRandom random = new SplittableRandom(SEED);
        int asMuch = 1;
        double[] drawn = new double[time.length];
        for (int draw = 0; draw < DRAWS; draw++) {
            for (int i = 0; i < drawn.length; i++) {
                drawn[i] =
                        Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
            }
            asMuch += share(time, drawn, bends[best(bends, drawn)]) >= explained ? 1 : 0;
        }
        return asMuch / (DRAWS + 1.0);
    }

    /** The best time near the best of the places looked at (golden section). */
    private static double narrowed(double[] time, double[] value, double from, double to) {
        double low = from;
        double high = to;
        for (int k = 0; k < NARROWINGS; k++) {
            double a = high - GOLDEN * (high - low);
            double b = low + GOLDEN * (high - low);
            if (Math.abs(Columns.dot(bend(time, a), value)) > Math.abs(Columns.dot(bend(time, b), value))) {
                high = b;
            } else {
                low = a;
            }
        }
        return (low + high) / 2;
    }

    private static BrokenStick fitted(double[] time, double[] value, double at, double chance) {
        double[] hinge = Arrays.stream(time).map(t -> Math.max(0, t - at)).toArray();
        double[] own = withoutLine(time, hinge);
        double turn = Columns.dot(own, value) / Columns.dot(own, own);
        double[] straight = new double[value.length];
        for (int i = 0; i < straight.length; i++) {
            straight[i] = value[i] - turn * hinge[i];
        }
        double[] left = withoutLine(time, straight);
        double slope = slope(time, straight);
        double level = Columns.mean(straight) - slope * Columns.mean(time);
        return new BrokenStick(at, level, slope, slope + turn, Columns.dot(left, left), chance);
    }

    private static double[] withoutLine(double[] time, double[] value) {
        double slope = slope(time, value);
        double middle = Columns.mean(time);
        double level = Columns.mean(value);
        double[] left = new double[value.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = value[i] - level - slope * (time[i] - middle);
        }
        return left;
    }

    private static double slope(double[] time, double[] value) {
        double middle = Columns.mean(time);
        double across = 0;
        double up = 0;
        for (int i = 0; i < time.length; i++) {
            across += (time[i] - middle) * (time[i] - middle);
            up += (time[i] - middle) * value[i];
        }
        return up / across;
    }
}
