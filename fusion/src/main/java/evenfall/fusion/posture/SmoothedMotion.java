package evenfall.fusion.posture;

import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A window's motion with the errors that its stances reveal taken out, and how sure it is.
 *
 * @param window what was given
 * @param errors what was found wrong
 * @param motion the motion without it
 * @param covariance of the unknowns that remain
 */
@SuppressWarnings("ArrayRecordComponent") // a matrix that only this package reads, compared by nobody
public record SmoothedMotion(MotionWindow window, MotionErrors errors, Motion motion, double[][] covariance) {

    /**
     * How surely the change of speed and height between two samples is known, the same whichever comes first.
     *
     * @param one index in the window of a sample
     * @param other the same of another
     */
    public Spread between(int one, int other) {
        return spread(change(one, other));
    }

    /**
     * Covariance of the errors of the way between two samples, world axes, the same whichever comes first.
     *
     * @param one index in the window of a sample
     * @param other the same of another
     */
    public Way wayBetween(int one, int other) {
        double[][] rows = change(one, other);
        double[][] place = new double[rows.length][];
        for (int c = 0; c < rows.length; c++) {
            place[c] = Arrays.copyOfRange(rows[c], ErrorPropagation.PLACE, ErrorPropagation.PLACE + 3);
        }
        RealMatrix with = new Array2DRowRealMatrix(covariance, false).multiply(new Array2DRowRealMatrix(place, false));
        RealMatrix whole = new Array2DRowRealMatrix(place, false).transpose().multiply(with);
        int[] unseen = unseenColumns();
        if (unseen.length == 0) {
            return new Way(Covariance.of(whole.getData(), 0), Covariance.NONE);
        }
        RealMatrix gaps = new Array2DRowRealMatrix(covariance, false).getSubMatrix(unseen, unseen);
        RealMatrix fromGaps = with.getSubMatrix(unseen, new int[] {0, 1, 2});
        RealMatrix hidden = fromGaps.transpose()
                .multiply(MotionSmoother.solver(gaps.getData()).solve(fromGaps));
        return new Way(Covariance.of(whole.subtract(hidden).getData(), 0), Covariance.of(hidden.getData(), 0));
    }

    /** The unknowns of what gaps hide. */
    private int[] unseenColumns() {
        return IntStream.range(0, window.jolts().size())
                .filter(k -> window.jolts().get(k).unseen())
                .flatMap(k ->
                        IntStream.range(0, MotionErrors.JOLT).map(c -> MotionErrors.FIXED + MotionErrors.JOLT * k + c))
                .toArray();
    }

    /**
     * Covariances of the errors of a way, m².
     *
     * @param seen what would be left if it were known what gaps hide
     * @param hidden what gaps hide of it
     */
    public record Way(Covariance seen, Covariance hidden) {}

    /** By how much the rows of the later of two samples differ from those of the earlier one. */
    private double[][] change(int one, int other) {
        int[] inOrder = {Math.min(one, other), Math.max(one, other)};
        double[][][] rows = ErrorPropagation.rows(window, motion, inOrder);
        for (int c = 0; c < covariance.length; c++) {
            for (int r = 0; r < 9; r++) {
                rows[1][c][r] -= rows[0][c][r];
            }
        }
        return rows[1];
    }

    /** How surely speed and height at a sample are known, place counted from the window's start. */
    public Spread at(int index) {
        return spread(ErrorPropagation.rows(window, motion, new int[] {index})[0]);
    }

    /** What the unknowns' covariance makes of errors that depend on them as the rows say. */
    private Spread spread(double[][] rows) {
        return new Spread(sigma(rows, ErrorPropagation.SPEED + 2), sigma(rows, ErrorPropagation.PLACE + 2));
    }

    private double sigma(double[][] rows, int r) {
        return Math.sqrt(Math.max(0, variance(rows, r)));
    }

    private double variance(double[][] rows, int r) {
        double variance = 0;
        for (int a = 0; a < covariance.length; a++) {
            variance += rows[a][r] * product(covariance[a], rows, r);
        }
        return variance;
    }

    private static double product(double[] row, double[][] rows, int r) {
        double product = 0;
        for (int b = 0; b < row.length; b++) {
            product += row[b] * rows[b][r];
        }
        return product;
    }

    /**
     * Errors of the turn between two samples about the world's axes, rad², without what the gyroscope's scale does, which goes with
     * each angle's own turning; the same whichever comes first.
     *
     * @param one index in the window of a sample
     * @param other the same of another
     */
    public Covariance turnBetween(int one, int other) {
        double[][] rows = change(one, other);
        double[][] turn = new double[3][3];
        for (int a = 0; a < covariance.length; a++) {
            if (!scalesRate(a)) {
                addTurn(turn, rows, a);
            }
        }
        return Covariance.of(turn, 0);
    }

    private void addTurn(double[][] turn, double[][] rows, int a) {
        for (int b = 0; b < covariance.length; b++) {
            if (!scalesRate(b)) {
                addTurn(turn, rows[a], covariance[a][b], rows[b]);
            }
        }
    }

    private static void addTurn(double[][] turn, double[] left, double weight, double[] right) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                turn[i][j] += left[i] * weight * right[j];
            }
        }
    }

    private static boolean scalesRate(int column) {
        return column >= MotionErrors.RATE_SCALE && column < MotionErrors.RATE_SCALE + 3;
    }

    /** One standard deviation of the gyroscope's scale about an axis, sensor axes, unit vector. */
    public double rateScaleSigma(Vector3 about) {
        // Each axis turns by its share of the turning and errs by its scale times that.
        Vector3 squares = new Vector3(about.x() * about.x(), about.y() * about.y(), about.z() * about.z());
        return Covariance.of(covariance, MotionErrors.RATE_SCALE).along(squares);
    }

    /**
     * One standard deviation of the direction of the vertical about an axis, as the accelerometer's own bias leaves it in
     * a stance, rad.
     *
     * @param across unit vector in sensor axes along which a bias turns the vertical about that axis
     */
    public double levelSigma(Vector3 across) {
        return Covariance.of(covariance, 0).along(across) / Gravity.STANDARD;
    }

    /**
     * What the impact, the last of the window's jolts, added to the speed beyond what was recorded, along a direction.
     *
     * @param along unit vector, world axes
     */
    public Jump impactJump(Vector3 along) {
        int last = window.jolts().size() - 1;
        if (last < 0) {
            return new Jump(0, 0);
        }
        int c = MotionErrors.FIXED + MotionErrors.JOLT * last;
        return new Jump(
                errors.jumps().get(last).dot(along),
                Covariance.of(covariance, c).along(along));
    }

    /**
     * A step of the speed.
     *
     * @param value m/s
     * @param sigma one standard deviation of it, m/s
     */
    public record Jump(double value, double sigma) {}

    /**
     * One standard deviation of the error of what goes up and down.
     *
     * @param speedUp vertical speed, m/s
     * @param placeUp height, m
     */
    public record Spread(double speedUp, double placeUp) {}
}
