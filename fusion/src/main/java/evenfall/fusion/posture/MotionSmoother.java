package evenfall.fusion.posture;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Finds what makes the speed of several windows of one sensor come out wrong in their stances: linear least squares with
 * what is known beforehand, the sensor's bias and scale shared by all windows, the rest a window's own.
 *
 * <p>Each window is reduced to its say on the shared unknowns (Schur complement), these are solved once, and each window
 * is then solved with them: the same answer as one large system (Björck, Numerical Methods for Least Squares Problems,
 * 1996, chapter 6), linear in the number of windows.
 */
public final class MotionSmoother {

    /** Usual left-over bias of a cheap accelerometer, m/s²: 25 mg. */
    private static final double FORCE_BIAS_SIGMA = 0.025 * Gravity.STANDARD;
    /** Usual scale error of a cheap accelerometer and gyroscope. */
    private static final double FORCE_SCALE_SIGMA = 0.006;

    private static final double RATE_SCALE_SIGMA = 0.006;

    /** The library refuses what is less even than this; what it is given was averaged. */
    private static final double UNEVEN = 1e-6;

    /** Diagonal turns: roundoff must not make a matrix lose its last bit of definiteness. */
    private static final double FLOOR = 1e-12;
    /** The errors act on one another in the second order, so the equations are drawn up again at the first answer. */
    private static final int ROUNDS = 2;

    private final List<MotionWindow> windows;
    private final SensorKnowledge before;
    private List<Local> locals = List.of();
    private RealVector sharedValue = new ArrayRealVector(MotionErrors.SHARED);
    private Array2DRowRealMatrix sharedCovariance = new Array2DRowRealMatrix(MotionErrors.SHARED, MotionErrors.SHARED);

    /** A smoother over the windows of one sensor, any number. */
    public MotionSmoother(List<MotionWindow> windows) {
        this(windows, SensorKnowledge.NONE);
    }

    /** A smoother over windows of a sensor of which other windows told something already. */
    public MotionSmoother(List<MotionWindow> windows, SensorKnowledge before) {
        this.windows = List.copyOf(windows);
        this.before = before;
        List<double[]> values = windows.stream()
                .map(window -> new double
                        [MotionErrors.FIXED + MotionErrors.JOLT * window.jolts().size()])
                .toList();
        for (int round = 0; round < ROUNDS; round++) {
            linearise(values);
            List<double[]> next = new ArrayList<>();
            for (Local local : locals) {
                next.add(local.values(sharedValue));
            }
            values = next;
        }
    }

    private void linearise(List<double[]> values) {
        List<Local> next = new ArrayList<>();
        RealMatrix shared = new Array2DRowRealMatrix(MotionErrors.SHARED, MotionErrors.SHARED);
        RealVector right = new ArrayRealVector(MotionErrors.SHARED);
        for (int c = 0; c < MotionErrors.SHARED; c++) {
            double sigma = c < 3 ? FORCE_BIAS_SIGMA : c < 6 ? FORCE_SCALE_SIGMA : RATE_SCALE_SIGMA;
            shared.addToEntry(c, c, 1 / (sigma * sigma));
        }
        shared = shared.add(before.information());
        right = right.add(before.right());
        for (int k = 0; k < windows.size(); k++) {
            Local local = Local.of(windows.get(k), values.get(k));
            shared = shared.add(local.schur());
            right = right.add(local.schurRight());
            next.add(local);
        }
        locals = next;
        sharedCovariance = inverse(shared.getData());
        sharedValue = sharedCovariance.operate(right);
    }

    /** The motion of the window given at place {@code k}; made anew at each call, so that long recordings fit. */
    public SmoothedMotion motion(int k) {
        return locals.get(k).solve(windows.get(k), sharedValue, sharedCovariance);
    }

    /** What the sensor itself gets wrong, with nothing of any window. */
    public MotionErrors sensorErrors() {
        return MotionErrors.of(Arrays.copyOf(sharedValue.toArray(), MotionErrors.FIXED));
    }

    /** What the windows and those before them tell of the sensor itself. */
    public SensorKnowledge knowledge() {
        RealMatrix information = before.information();
        RealVector right = before.right();
        for (Local local : locals) {
            information = information.add(local.schur());
            right = right.add(local.schurRight());
        }
        return new SensorKnowledge(information, right);
    }

    private static Array2DRowRealMatrix inverse(double[][] m) {
        return new Array2DRowRealMatrix(solver(m).getInverse().getData(), false);
    }

    /** Of a symmetric positive definite matrix; what roundoff leaves of asymmetry is averaged away first. */
    static DecompositionSolver solver(double[][] m) {
        double[][] even = new double[m.length][m.length];
        for (int i = 0; i < m.length; i++) {
            average(even[i], m, i);
        }
        return new CholeskyDecomposition(new Array2DRowRealMatrix(even, false), UNEVEN, FLOOR).getSolver();
    }

    private static void average(double[] into, double[][] m, int i) {
        for (int j = 0; j < into.length; j++) {
            into[j] = (m[i][j] + m[j][i]) * 0.5;
        }
    }

    private static Array2DRowRealMatrix transposed(Array2DRowRealMatrix m) {
        double[][] turned = new double[m.getColumnDimension()][m.getRowDimension()];
        for (int i = 0; i < m.getRowDimension(); i++) {
            putColumn(turned, i, m.getDataRef()[i]);
        }
        return new Array2DRowRealMatrix(turned, false);
    }

    private static void putColumn(double[][] into, int column, double[] values) {
        for (int j = 0; j < into.length; j++) {
            into[j][column] = values[j];
        }
    }

    /**
     * One window's normal equations, split into the sensor's unknowns (s) and its own (l). The matrices are held by what
     * they are: of matrices in general the library multiplies number by number through two checks each.
     */
    private record Local(
            Array2DRowRealMatrix ss,
            Array2DRowRealMatrix sl,
            Array2DRowRealMatrix llInverse,
            RealVector bs,
            RealVector bl) {

        static Local of(MotionWindow window, double[] at) {
            int n = MotionErrors.FIXED + MotionErrors.JOLT * window.jolts().size();
            double[][] a = new double[n][n];
            double[] b = new double[n];
            Motion motion = Motion.of(window, MotionErrors.of(at));
            int[] kept = window.rests().stream()
                    .mapToInt(rest -> rest.index() - window.from())
                    .toArray();
            double[][][] rows = ErrorPropagation.rows(window, motion, kept);
            for (int m = 0; m < kept.length; m++) {
                addRest(motion.speed(kept[m]), window.rests().get(m).sigma(), rows[m], at, a, b);
            }
            addPriors(window, motion, a);
            int s = MotionErrors.SHARED;
            return new Local(
                    new Array2DRowRealMatrix(part(a, 0, s, 0, s), false),
                    new Array2DRowRealMatrix(part(a, 0, s, s, n), false),
                    inverse(part(a, s, n, s, n)),
                    new ArrayRealVector(Arrays.copyOfRange(b, 0, s)),
                    new ArrayRealVector(Arrays.copyOfRange(b, s, n)));
        }

        private static double[][] part(double[][] a, int row, int rowEnd, int column, int columnEnd) {
            double[][] part = new double[rowEnd - row][];
            for (int i = row; i < rowEnd; i++) {
                part[i - row] = Arrays.copyOfRange(a[i], column, columnEnd);
            }
            return part;
        }

        private static void addRest(
                Vector3 speed, double sigma, double[][] rows, double[] at, double[][] a, double[] b) {
            double weight = 1 / (sigma * sigma);
            int r = ErrorPropagation.SPEED;
            addRow(a, b, rows, r, sum(-speed.x(), rows, r, at), weight);
            addRow(a, b, rows, r + 1, sum(-speed.y(), rows, r + 1, at), weight);
            addRow(a, b, rows, r + 2, sum(-speed.z(), rows, r + 2, at), weight);
        }

        private static double sum(double start, double[][] row, int r, double[] at) {
            double sum = start;
            for (int c = 0; c < at.length; c++) {
                sum += row[c][r] * at[c];
            }
            return sum;
        }

        private static void addRow(double[][] a, double[] b, double[][] row, int r, double miss, double weight) {
            for (int i = 0; i < b.length; i++) {
                double left = weight * row[i][r];
                if (left != 0) {
                    b[i] += left * miss;
                    addScaled(a[i], left, row, r);
                }
            }
        }

        private static void addScaled(double[] to, double factor, double[][] row, int r) {
            for (int j = 0; j < to.length; j++) {
                to[j] += factor * row[j][r];
            }
        }

        private static void addPriors(MotionWindow w, Motion motion, double[][] a) {
            addPrior(a, MotionErrors.START_SPEED, 3, w.startSpeedSigma());
            addPrior(a, MotionErrors.START_TILT, 2, w.startTiltSigma());
            addPrior(a, MotionErrors.RATE_BIAS, 3, w.gyroBiasSigma());
            for (int k = 0; k < w.jolts().size(); k++) {
                MotionWindow.Jolt jolt = w.jolts().get(k);
                int c = MotionErrors.FIXED + MotionErrors.JOLT * k;
                Quaternion worldFromSensor = motion.orientation(jolt.index() - w.from());
                addPrior(a, c, jolt.speed().turnedBy(worldFromSensor));
                addPrior(
                        a,
                        c + 3,
                        jolt.turn()
                                .turnedBy(worldFromSensor)
                                .plus(Vector3.X.times(jolt.tiltSigma()))
                                .plus(Vector3.Y.times(jolt.tiltSigma())));
            }
        }

        private static void addPrior(double[][] a, int first, Covariance covariance) {
            double[][] information = inverse(covariance.matrix()).getDataRef();
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    a[first + i][first + j] += information[i][j];
                }
            }
        }

        private static void addPrior(double[][] a, int first, int count, double sigma) {
            for (int c = first; c < first + count; c++) {
                a[c][c] += 1 / (sigma * sigma);
            }
        }

        RealMatrix schur() {
            return ss.subtract(sl.multiply(llInverse).multiply(transposed(sl)));
        }

        RealVector schurRight() {
            return bs.subtract(sl.multiply(llInverse).operate(bl));
        }

        double[] values(RealVector shared) {
            RealVector own = llInverse.operate(bl.subtract(transposed(sl).operate(shared)));
            return shared.append(own).toArray();
        }

        SmoothedMotion solve(MotionWindow window, RealVector shared, Array2DRowRealMatrix sharedCovariance) {
            Array2DRowRealMatrix back = llInverse.multiply(transposed(sl));
            Array2DRowRealMatrix cross = back.multiply(sharedCovariance);
            Array2DRowRealMatrix own = llInverse.add(cross.multiply(transposed(back)));
            int s = MotionErrors.SHARED;
            double[][] covariance = new double[s + own.getRowDimension()][s + own.getRowDimension()];
            for (int i = 0; i < s; i++) {
                System.arraycopy(sharedCovariance.getDataRef()[i], 0, covariance[i], 0, s);
            }
            for (int i = s; i < covariance.length; i++) {
                System.arraycopy(own.getDataRef()[i - s], 0, covariance[i], s, covariance.length - s);
                putCross(covariance, i, cross.getDataRef()[i - s]);
            }
            MotionErrors errors = MotionErrors.of(values(shared));
            return new SmoothedMotion(window, errors, Motion.of(window, errors), covariance);
        }

        private static void putCross(double[][] covariance, int i, double[] cross) {
            for (int j = 0; j < cross.length; j++) {
                covariance[i][j] = -cross[j];
                covariance[j][i] = -cross[j];
            }
        }
    }
}
