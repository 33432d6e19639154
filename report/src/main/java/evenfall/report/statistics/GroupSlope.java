package evenfall.report.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.jspecify.annotations.Nullable;

/**
 * How a value changes with a quantity within groups, each of which has a level of its own, other columns held equal: least
 * squares, values far from the line brought nearer (winsorised residuals: Huber 1981, Robust Statistics, section 7.8), the error
 * by leaving out one session after another.
 */
public final class GroupSlope {

    /** Of the quantity less than this share is its own: then it cannot be told from the other columns. */
    private static final double OWN_SHARE = 0.05;

    /** Beyond so many robust spreads a value is wild: common practice, no source. */
    private static final double FAR = 3;

    private static final int ROUNDS = 8;

    /** A share below this is rounding. */
    private static final double NOTHING = 1e-9;

    private final int[] session;
    private final int sessions;
    private final double[][] columns;
    private final double[] value;
    private final double[][][] products;

    private GroupSlope(int[] group, int[] session, int sessions, double[][] columns, double[] value) {
        this.session = session;
        this.sessions = sessions;
        this.columns = Arrays.stream(columns).map(c -> centred(group, c)).toArray(double[][]::new);
        int p = columns.length;
        this.products = new double[sessions][p][p];
        for (int i = 0; i < value.length; i++) {
            for (int a = 0; a < p; a++) {
                for (int b = 0; b < p; b++) {
                    products[session[i]][a][b] += this.columns[a][i] * this.columns[b][i];
                }
            }
        }
        this.value = tamed(group, value);
    }

    /**
     * The slope, with its error.
     *
     * @param group number of each value's group; a group lies in one session
     * @param session number of each value's session
     * @param sessions how many there are
     * @param columns the quantity first, then what is to be held equal
     * @param least sessions that must each tell something of the quantity
     * @return null where fewer do, or where the quantity cannot be told from the other columns
     */
    public static @Nullable StudentT of(
            int[] group, int[] session, int sessions, double[][] columns, double[] value, int least) {
        GroupSlope slope = new GroupSlope(group, session, sessions, columns, value);
        return slope.told() < least ? null : slope.fitted();
    }

    /** How many sessions tell something of the quantity that the other columns do not. */
    private long told() {
        double[] own = own();
        double[] squares = new double[sessions];
        for (int i = 0; i < own.length; i++) {
            squares[session[i]] += own[i] * own[i];
        }
        double left = Arrays.stream(squares).sum();
        return left > OWN_SHARE * Columns.dot(columns[0], columns[0])
                ? IntStream.range(0, sessions)
                        .filter(s -> varies(s) && squares[s] > NOTHING * left)
                        .count()
                : 0;
    }

    /** Whether the quantity varies within a group of a session. */
    private boolean varies(int s) {
        return products[s][0][0] > NOTHING * Columns.dot(columns[0], columns[0]);
    }

    /** The quantity less what the other columns say of it. */
    private double[] own() {
        double[][] others = Arrays.copyOfRange(columns, 1, columns.length);
        double[] own = columns[0].clone();
        // Orthogonal columns take away their share one after another.
        double[][] basis = new double[others.length][];
        for (int c = 0; c < others.length; c++) {
            basis[c] = others[c].clone();
            for (int k = 0; k < c; k++) {
                takeAway(basis[c], basis[k]);
            }
        }
        for (double[] one : basis) {
            takeAway(own, one);
        }
        return own;
    }

    private static void takeAway(double[] from, double[] column) {
        double length = Columns.dot(column, column);
        double share = length > NOTHING * column.length ? Columns.dot(from, column) / length : 0;
        for (int i = 0; i < from.length; i++) {
            from[i] -= share * column[i];
        }
    }

    private StudentT fitted() {
        double[] without = IntStream.range(0, sessions)
                .filter(this::varies)
                .mapToDouble(s -> solved(s, value)[0])
                .toArray();
        return new StudentT(solved(-1, value)[0], Jackknife.error(without), without.length - 1);
    }

    /** The coefficients by all sessions but one. */
    private double[] solved(int leftOut, double[] y) {
        int p = columns.length;
        double[][] m = new double[p][p];
        double[] right = new double[p];
        for (int s = 0; s < sessions; s++) {
            for (int a = 0; s != leftOut && a < p; a++) {
                for (int b = 0; b < p; b++) {
                    m[a][b] += products[s][a][b];
                }
            }
        }
        for (int i = 0; i < y.length; i++) {
            for (int a = 0; session[i] != leftOut && a < p; a++) {
                right[a] += columns[a][i] * y[i];
            }
        }
        // A column that does not vary has no say; without this little it would have no solution either.
        double little = NOTHING * y.length;
        for (int a = 1; a < p; a++) {
            m[a][a] += little;
        }
        try {
            return new LUDecomposition(new Array2DRowRealMatrix(m, false))
                    .getSolver()
                    .solve(new ArrayRealVector(right, false))
                    .toArray();
        } catch (SingularMatrixException e) {
            return new double[p];
        }
    }

    private double[] tamed(int[] group, double[] values) {
        double[] tamed = centred(group, values);
        double[] own = tamed.clone();
        int free = values.length - (int) Arrays.stream(group).distinct().count() - columns.length;
        double scale = FAR * Math.sqrt(values.length / (double) Math.max(1, free));
        for (int round = 0; round < ROUNDS; round++) {
            double[] b = solved(-1, tamed);
            double[] left = new double[own.length];
            for (int i = 0; i < own.length; i++) {
                left[i] = own[i];
                for (int a = 0; a < b.length; a++) {
                    left[i] -= b[a] * columns[a][i];
                }
            }
            double reach = scale * Medians.spread(left, 0);
            double[] nearer = new double[own.length];
            for (int i = 0; i < own.length; i++) {
                nearer[i] = own[i] - left[i] + Math.max(-reach, Math.min(reach, left[i]));
            }
            tamed = centred(group, nearer);
        }
        return tamed;
    }

    private static double[] centred(int[] group, double[] values) {
        return Columns.centred(group, Arrays.stream(group).max().orElse(0) + 1, values);
    }
}
