package evenfall.report.statistics;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.jspecify.annotations.Nullable;

/**
 * Logistic regression whose likelihood carries Jeffreys' prior (Firth 1993, Biometrika 80:27), so that it stays finite where
 * hits and misses do not overlap. Found by Newton's steps on Firth's modified score, cut in half where too long.
 */
public final class LogisticFit {

    private static final int ROUNDS = 60;
    private static final double DONE = 1e-9;

    /** Longest step, in units in which each column has about the size 1. */
    private static final double LONGEST = 2;

    private LogisticFit() {}

    /**
     * The coefficients, one a column; all 0 where the columns repeat one another.
     *
     * @param columns what the chance may depend on, a column of ones among them if there is to be a level
     * @param hit whether it was so
     */
    public static double[] of(double[][] columns, boolean[] hit) {
        return of(columns, hit, new double[columns.length]);
    }

    /**
     * The same, looked for from coefficients that may lie near.
     *
     * @param start one a column
     */
    public static double[] of(double[][] columns, boolean[] hit, double[] start) {
        int p = columns.length;
        int n = hit.length;
        double[] scale = scales(columns);
        double[] b = new double[p];
        for (int c = 0; c < p; c++) {
            b[c] = start[c] * scale[c];
        }
        for (int round = 0; round < ROUNDS; round++) {
            double[] chance = new double[n];
            double[][] information = new double[p][p];
            for (int i = 0; i < n; i++) {
                double eta = 0;
                for (int c = 0; c < p; c++) {
                    eta += b[c] * columns[c][i] / scale[c];
                }
                chance[i] = 1 / (1 + Math.exp(-eta));
                double w = chance[i] * (1 - chance[i]);
                for (int c = 0; c < p; c++) {
                    for (int d = 0; d < p; d++) {
                        information[c][d] += w * columns[c][i] / scale[c] * columns[d][i] / scale[d];
                    }
                }
            }
            double[][] inverse = inverse(information);
            if (inverse == null) {
                return new double[p];
            }
            double longest = step(b, columns, scale, hit, chance, inverse);
            if (longest < DONE) {
                break;
            }
        }
        for (int c = 0; c < p; c++) {
            b[c] /= scale[c];
        }
        return b;
    }

    private static double step(
            double[] b, double[][] columns, double[] scale, boolean[] hit, double[] chance, double[][] inverse) {
        int p = b.length;
        double[] score = new double[p];
        double[] x = new double[p];
        for (int i = 0; i < hit.length; i++) {
            for (int c = 0; c < p; c++) {
                x[c] = columns[c][i] / scale[c];
            }
            double leverage = 0;
            for (int c = 0; c < p; c++) {
                for (int d = 0; d < p; d++) {
                    leverage += x[c] * inverse[c][d] * x[d];
                }
            }
            leverage *= chance[i] * (1 - chance[i]);
            double miss = (hit[i] ? 1 : 0) - chance[i] + leverage * (0.5 - chance[i]);
            for (int c = 0; c < p; c++) {
                score[c] += miss * x[c];
            }
        }
        double[] step = new double[p];
        double longest = 0;
        for (int c = 0; c < p; c++) {
            for (int d = 0; d < p; d++) {
                step[c] += inverse[c][d] * score[d];
            }
            longest = Math.max(longest, Math.abs(step[c]));
        }
        double part = longest > LONGEST ? LONGEST / longest : 1;
        for (int c = 0; c < p; c++) {
            b[c] += part * step[c];
        }
        return longest;
    }

    private static double[] scales(double[][] columns) {
        double[] scale = new double[columns.length];
        for (int c = 0; c < columns.length; c++) {
            double most = 0;
            for (double value : columns[c]) {
                most = Math.max(most, Math.abs(value));
            }
            scale[c] = most > 0 ? most : 1;
        }
        return scale;
    }

    private static double @Nullable [][] inverse(double[][] information) {
        try {
            RealMatrix matrix = new Array2DRowRealMatrix(information, false);
            return new LUDecomposition(matrix).getSolver().getInverse().getData();
        } catch (SingularMatrixException e) {
            return null;
        }
    }
}
