package evenfall.fusion.posture;

import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;

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
     * One standard deviation of the errors of the change between two samples.
     *
     * @param first index in the window of the earlier sample
     * @param second index in the window of the later sample
     */
    public Spread between(int first, int second) {
        double[][][] rows = ErrorPropagation.rows(window, motion, new int[] {first, second});
        for (int c = 0; c < covariance.length; c++) {
            for (int r = 0; r < 9; r++) {
                rows[1][c][r] -= rows[0][c][r];
            }
        }
        return spread(rows[1]);
    }

    /** One standard deviation of the errors at a sample, place counted from the window's start. */
    public Spread at(int index) {
        return spread(ErrorPropagation.rows(window, motion, new int[] {index})[0]);
    }

    /** What the unknowns' covariance makes of errors that depend on them as the rows say. */
    private Spread spread(double[][] rows) {
        double[] sigma = new double[9];
        for (int r = 0; r < 9; r++) {
            double variance = 0;
            for (int a = 0; a < covariance.length; a++) {
                double product = 0;
                for (int b = 0; b < covariance.length; b++) {
                    product += covariance[a][b] * rows[b][r];
                }
                variance += rows[a][r] * product;
            }
            sigma[r] = Math.sqrt(Math.max(0, variance));
        }
        return ofAxes(sigma);
    }

    /**
     * One standard deviation of the direction of the vertical about an axis, as the accelerometer's own bias leaves it in
     * a stance, rad.
     *
     * @param across unit vector in sensor axes along which a bias turns the vertical about that axis
     */
    public double levelSigma(Vector3 across) {
        double[] u = {across.x(), across.y(), across.z()};
        double variance = 0;
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                variance += u[a] * covariance[a][b] * u[b];
            }
        }
        return Math.sqrt(variance) / Gravity.STANDARD;
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
        double[] u = {along.x(), along.y(), along.z()};
        int c = MotionErrors.FIXED + MotionErrors.JOLT * last;
        double variance = 0;
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                variance += u[a] * covariance[c + a][c + b] * u[b];
            }
        }
        return new Jump(errors.jumps().get(last).dot(along), Math.sqrt(variance));
    }

    /**
     * A step of the speed.
     *
     * @param value m/s
     * @param sigma one standard deviation of it, m/s
     */
    public record Jump(double value, double sigma) {}

    private static Spread ofAxes(double[] s) {
        return new Spread(
                Math.hypot(s[0], s[1]) / Math.sqrt(2),
                s[2],
                Math.hypot(s[3], s[4]) / Math.sqrt(2),
                s[5],
                Math.hypot(s[6], s[7]) / Math.sqrt(2),
                s[8]);
    }

    /**
     * One standard deviation of each part's error; horizontal ones along one axis.
     *
     * @param tilt about a horizontal axis, rad
     * @param heading about the vertical, rad
     * @param speedAcross horizontal speed, m/s
     * @param speedUp vertical speed, m/s
     * @param placeAcross horizontal place, m
     * @param placeUp height, m
     */
    public record Spread(
            double tilt, double heading, double speedAcross, double speedUp, double placeAcross, double placeUp) {}
}
