package evenfall.report.block;

import evenfall.fusion.landing.Side;
import evenfall.report.statistics.WithinSessions;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * What drop height does to a measure, and which foot, found from landings of the same day only: a day's own level, and
 * with it whatever the weeks do, drops out.
 *
 * <p>Height acts through the speed it gives, which grows with its square root; a curve (the square of that) is let in.
 */
final class HeightModel {

    private static final int COLUMNS = 4;
    // Feet first: where a foot always has its own box, height cannot be told from the foot and drops out.
    private static final int LEFT = 0;
    private static final int RIGHT = 1;
    private static final int SPEED = 2;
    private static final int CURVE = 3;

    /** Mean drop heights of sessions or sides nearer than this are equal, m. */
    static final double EQUAL_M = 0.01;

    private final double[][] columns;
    private final double[] value;
    private final WithinSessions fit;

    private HeightModel(double[][] columns, double[] value, WithinSessions fit) {
        this.columns = columns;
        this.value = value;
        this.fit = fit;
    }

    /**
     * Fits.
     *
     * @param landings landings that have a height
     * @param session number of each landing's session
     * @param sessions how many there are
     * @param value of each landing
     */
    static HeightModel of(List<BlockLanding> landings, int[] session, int sessions, double[] value) {
        double[][] columns = columns(landings);
        return new HeightModel(columns, value, WithinSessions.of(session, sessions, columns, value));
    }

    /** What a measure may depend on: the feet, the square root of height, and its square about the mean. */
    static double[][] columns(List<BlockLanding> landings) {
        int n = landings.size();
        double[] root = new double[n];
        double mean = 0;
        for (int i = 0; i < n; i++) {
            root[i] =
                    Math.sqrt(Math.max(0, Objects.requireNonNull(landings.get(i).heightM())));
            mean += root[i] / n;
        }
        double[][] columns = Arrays.copyOf(feet(landings), COLUMNS);
        columns[SPEED] = new double[n];
        columns[CURVE] = new double[n];
        for (int i = 0; i < n; i++) {
            double z = root[i] - mean;
            columns[SPEED][i] = z;
            columns[CURVE][i] = z * z;
        }
        return columns;
    }

    /** The same where heights are not known: the feet alone. */
    static double[][] feet(List<BlockLanding> landings) {
        double[][] columns = new double[2][landings.size()];
        for (int i = 0; i < landings.size(); i++) {
            columns[LEFT][i] = landings.get(i).side() == Side.LEFT ? 1 : 0;
            columns[RIGHT][i] = landings.get(i).side() == Side.RIGHT ? 1 : 0;
        }
        return columns;
    }

    /** Each landing's height less what its foot has of its own within sessions, m. */
    static double[] heightsAtEqualFoot(List<BlockLanding> landings, int[] session, int sessions) {
        double[] heights = landings.stream()
                .mapToDouble(landing -> Objects.requireNonNull(landing.heightM()))
                .toArray();
        double[][] feet = feet(landings);
        double[] b = WithinSessions.of(session, sessions, feet, heights).coefficients();
        for (int i = 0; i < heights.length; i++) {
            heights[i] -= b[LEFT] * feet[LEFT][i] + b[RIGHT] * feet[RIGHT][i];
        }
        return heights;
    }

    /** Whether landings of one day differ in height enough to tell what height does. */
    boolean tellsHeight() {
        return fit.has(SPEED);
    }

    /** Each value less what its height does. */
    double[] atEqualHeight() {
        return less(SPEED, CURVE);
    }

    /** Each value less what its height and its foot do. */
    double[] atEqualHeightAndFoot() {
        return less(LEFT, RIGHT, SPEED, CURVE);
    }

    private double[] less(int... which) {
        double[] b = fit.coefficients();
        double[] left = value.clone();
        for (int c : which) {
            for (int i = 0; i < left.length; i++) {
                left[i] -= b[c] * columns[c][i];
            }
        }
        return left;
    }

    /**
     * Variance that not knowing the effects exactly adds to a sum of the adjusted values.
     *
     * @param weight of each landing in the sum
     */
    double variance(double[] weight) {
        double[] factors = new double[columns.length];
        for (int c = 0; c < factors.length; c++) {
            for (int i = 0; i < weight.length; i++) {
                factors[c] += weight[i] * columns[c][i];
            }
        }
        return fit.variance(factors);
    }
}
