package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Vector3;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.jspecify.annotations.Nullable;

/**
 * How far both sensors of a trunk sit from the point where its two ends meet. A trunk that folds while it rises moves the shoulders
 * otherwise than the pelvis, which looks as if one clock were late, by up to 10 ms and with a sign that depends on what the person
 * does. Without what turning does at the end of each arm both tell the same force, of the point in the middle. A bias of a sensor, which
 * tips with the trunk, misleads likewise and is found with the arms.
 *
 * @param pelvis from the middle to the pelvis's sensor, m, its axes
 * @param upperBack the same of the upper back's
 * @param pelvisBias bias of the pelvis's sensor, as far as it matters here, m/s², its axes
 * @param upperBackBias the same of the upper back's
 */
record LeverArms(Vector3 pelvis, Vector3 upperBack, Vector3 pelvisBias, Vector3 upperBackBias) {

    private static final int UNKNOWNS = 12;
    /** Arms and biases that the motion does not tell are kept short: this share of the mean information of their kind. */
    private static final double SHORT = 1e-2;

    /**
     * The arms by which the forces of two sensors are most alike; null if no stretch lies within both.
     *
     * @param stretches first places of the stretches of the pelvis's columns
     * @param length of each
     * @param map the clocks
     */
    static @Nullable LeverArms fit(
            TrunkEnd pelvis, TrunkEnd upperBack, List<Integer> stretches, int length, ClockMap map) {
        double[][] information = new double[UNKNOWNS][UNKNOWNS];
        double[] right = new double[UNKNOWNS];
        double[][] rows = new double[length][UNKNOWNS + 1];
        for (int from : stretches) {
            if (fill(rows, pelvis, upperBack, from, map)) {
                add(rows, information, right);
            }
        }
        mirror(information);
        RealMatrix matrix = new Array2DRowRealMatrix(information, false);
        if (!keepShort(matrix, 0, UNKNOWNS / 2) || !keepShort(matrix, UNKNOWNS / 2, UNKNOWNS)) {
            return null;
        }
        double[] arms = new CholeskyDecomposition(matrix)
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
        return new LeverArms(
                new Vector3(-arms[0], -arms[1], -arms[2]),
                new Vector3(arms[3], arms[4], arms[5]),
                new Vector3(-arms[6], -arms[7], -arms[8]),
                new Vector3(arms[9], arms[10], arms[11]));
    }

    /** Adds to unknowns of one kind what keeps them short; false where the motion tells nothing of any. */
    private static boolean keepShort(RealMatrix information, int from, int to) {
        double trace = 0;
        for (int k = from; k < to; k++) {
            trace += information.getEntry(k, k);
        }
        for (int k = from; k < to; k++) {
            information.addToEntry(k, k, SHORT * trace / (to - from));
        }
        return trace > 0;
    }

    /** Rows of what turning and biases add at both ends and, last, of how much more the upper back feels; false if they do not reach. */
    private static boolean fill(double[][] rows, TrunkEnd pelvis, TrunkEnd upperBack, int from, ClockMap map) {
        for (int k = 0; k < rows.length; k++) {
            int here = from + k;
            double t = ForceColumn.timeS(here);
            double there = map.toUpperBack(t) / ForceColumn.STEP_S - 0.5;
            int i = (int) Math.floor(there);
            if (i < 0 || i + 1 >= upperBack.size()) {
                return false;
            }
            double part = there - i;
            for (int axis = 0; axis < 3; axis++) {
                rows[k][axis] = pelvis.turningAt(axis, here, 0);
                rows[k][3 + axis] = upperBack.turningAt(axis, i, part);
                rows[k][6 + axis] = pelvis.upAt(axis, here, 0);
                rows[k][9 + axis] = upperBack.upAt(axis, i, part);
            }
            rows[k][UNKNOWNS] = upperBack.forceAt(i, part) - pelvis.forceAt(here, 0);
        }
        return true;
    }

    /** Adds the normal equations of rows less their means; of the symmetric matrix the part up to the diagonal. */
    private static void add(double[][] rows, double[][] information, double[] right) {
        double[] mean = new double[UNKNOWNS + 1];
        for (double[] row : rows) {
            for (int a = 0; a <= UNKNOWNS; a++) {
                mean[a] += row[a] / rows.length;
            }
        }
        for (double[] row : rows) {
            for (int a = 0; a < UNKNOWNS; a++) {
                double off = row[a] - mean[a];
                right[a] += off * (row[UNKNOWNS] - mean[UNKNOWNS]);
                for (int b = 0; b <= a; b++) {
                    information[a][b] += off * (row[b] - mean[b]);
                }
            }
        }
    }

    private static void mirror(double[][] matrix) {
        for (int a = 0; a < matrix.length; a++) {
            for (int b = 0; b < a; b++) {
                matrix[b][a] = matrix[a][b];
            }
        }
    }
}
