package evenfall.report.statistics;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Regression of a value on some columns within sessions: each session has a level of its own, so only differences
 * between landings of one day speak, and what a day or the weeks do cannot pass for what the columns do.
 *
 * <p>Huber's weights (Huber 1964, Ann. Math. Stat. 35:73) keep single wild landings from deciding. The covariance holds
 * sessions for what is drawn at random (Liang and Zeger 1986, Biometrika 73:13), and never less than independent landings
 * would give. A column that the columns before it as good as repeat, or that does not vary within any session, is left
 * out; its coefficient is 0.
 */
public final class WithinSessions {

    /** A column of which less than this share is its own is left out. */
    private static final double OWN_SHARE = 0.05;

    /** Columns that vary less than this are constant. */
    private static final double CONSTANT = 1e-9;

    /** Beyond so many robust spreads weights fall: common practice (Huber's 1.345 to 1.5). */
    private static final double HUBER = 1.5;

    private static final int ROUNDS = 15;

    private final double[] coefficients;
    private final int[] kept;
    private final double[][] covariance;

    private WithinSessions(double[] coefficients, int[] kept, double[][] covariance) {
        this.coefficients = coefficients;
        this.kept = kept;
        this.covariance = covariance;
    }

    /**
     * Fits.
     *
     * @param session number of each value's session, 0 to {@code sessions} - 1
     * @param sessions how many sessions there are
     * @param columns what the value may depend on, each as long as {@code value}; first ones first
     */
    public static WithinSessions of(int[] session, int sessions, double[][] columns, double[] value) {
        double[][] x = new double[columns.length][];
        for (int c = 0; c < columns.length; c++) {
            x[c] = Columns.centred(session, sessions, columns[c]);
        }
        int[] kept = choose(x);
        double[] coefficients = new double[columns.length];
        if (kept.length == 0) {
            return new WithinSessions(coefficients, kept, new double[0][0]);
        }
        double[] y = Columns.centred(session, sessions, value);
        double[] weight = new double[y.length];
        Arrays.fill(weight, 1);
        RealVector solved = new ArrayRealVector(kept.length);
        RealMatrix inverse = new Array2DRowRealMatrix(kept.length, kept.length);
        double[] left = y;
        for (int round = 0; round < ROUNDS; round++) {
            inverse = new LUDecomposition(products(x, kept, weight)).getSolver().getInverse();
            solved = inverse.operate(right(x, kept, weight, y));
            left = residuals(x, kept, solved, y);
            weigh(left, weight);
        }
        for (int k = 0; k < kept.length; k++) {
            coefficients[kept[k]] = solved.getEntry(k);
        }
        return new WithinSessions(coefficients, kept, covariance(session, sessions, x, kept, weight, left, inverse));
    }

    /** One a column; 0 for a column left out. */
    public double[] coefficients() {
        return coefficients.clone();
    }

    /** Whether column {@code c} took part. */
    public boolean has(int c) {
        return Arrays.stream(kept).anyMatch(k -> k == c);
    }

    /** Variance of the sum of coefficients times these factors, one a column; columns left out do not count. */
    public double variance(double[] factors) {
        double sum = 0;
        for (int i = 0; i < kept.length; i++) {
            for (int j = 0; j < kept.length; j++) {
                sum += factors[kept[i]] * covariance[i][j] * factors[kept[j]];
            }
        }
        return Math.max(0, sum);
    }

    /** Gram-Schmidt: what of each column the ones taken before it leave. */
    private static int[] choose(double[][] x) {
        double[][] basis = new double[x.length][];
        int[] kept = new int[x.length];
        int count = 0;
        for (int c = 0; c < x.length; c++) {
            double whole = Math.sqrt(Columns.dot(x[c], x[c]));
            if (whole < CONSTANT * Math.sqrt(x[c].length)) {
                continue;
            }
            double[] own = x[c].clone();
            for (int k = 0; k < count; k++) {
                double share = Columns.dot(own, basis[k]);
                for (int i = 0; i < own.length; i++) {
                    own[i] -= share * basis[k][i];
                }
            }
            double length = Math.sqrt(Columns.dot(own, own));
            if (length >= OWN_SHARE * whole) {
                for (int i = 0; i < own.length; i++) {
                    own[i] /= length;
                }
                basis[count] = own;
                kept[count++] = c;
            }
        }
        return Arrays.copyOf(kept, count);
    }

    private static RealMatrix products(double[][] x, int[] kept, double[] weight) {
        double[][] m = new double[kept.length][kept.length];
        for (int a = 0; a < kept.length; a++) {
            for (int b = 0; b <= a; b++) {
                double sum = 0;
                for (int i = 0; i < weight.length; i++) {
                    sum += weight[i] * x[kept[a]][i] * x[kept[b]][i];
                }
                m[a][b] = sum;
                m[b][a] = sum;
            }
        }
        return new Array2DRowRealMatrix(m, false);
    }

    private static RealVector right(double[][] x, int[] kept, double[] weight, double[] y) {
        double[] v = new double[kept.length];
        for (int a = 0; a < kept.length; a++) {
            for (int i = 0; i < y.length; i++) {
                v[a] += weight[i] * x[kept[a]][i] * y[i];
            }
        }
        return new ArrayRealVector(v, false);
    }

    private static double[] residuals(double[][] x, int[] kept, RealVector solved, double[] y) {
        double[] left = y.clone();
        for (int a = 0; a < kept.length; a++) {
            for (int i = 0; i < left.length; i++) {
                left[i] -= solved.getEntry(a) * x[kept[a]][i];
            }
        }
        return left;
    }

    private static void weigh(double[] left, double[] weight) {
        double limit = HUBER * Medians.spread(left, 0);
        for (int i = 0; i < left.length; i++) {
            double size = Math.abs(left[i]);
            weight[i] = size <= limit || limit == 0 ? 1 : limit / size;
        }
    }

    private static double[][] covariance(
            int[] session, int sessions, double[][] x, int[] kept, double[] weight, double[] left, RealMatrix inverse) {
        double[][] score = new double[sessions][kept.length];
        boolean[] seen = new boolean[sessions];
        double squares = 0;
        for (int i = 0; i < left.length; i++) {
            squares += weight[i] * left[i] * left[i];
            seen[session[i]] = true;
            for (int a = 0; a < kept.length; a++) {
                score[session[i]][a] += weight[i] * left[i] * x[kept[a]][i];
            }
        }
        int count = 0;
        for (boolean one : seen) {
            count += one ? 1 : 0;
        }
        RealMatrix middle = new Array2DRowRealMatrix(kept.length, kept.length);
        for (double[] s : score) {
            RealVector v = new ArrayRealVector(s, false);
            middle = middle.add(v.outerProduct(v));
        }
        double small = count > 1 ? count / (count - 1.0) : 1;
        double[][] bySession =
                inverse.multiply(middle).multiply(inverse).scalarMultiply(small).getData();
        double variance = squares / Math.max(1, left.length - count - kept.length);
        double[][] byLanding = inverse.scalarMultiply(variance).getData();
        for (int a = 0; a < kept.length; a++) {
            double factor = bySession[a][a] < byLanding[a][a] && bySession[a][a] > 0
                    ? Math.sqrt(byLanding[a][a] / bySession[a][a])
                    : 1;
            for (int b = 0; b < kept.length; b++) {
                bySession[a][b] *= factor;
                bySession[b][a] *= factor;
            }
        }
        return bySession[0][0] > 0 ? bySession : byLanding;
    }
}
