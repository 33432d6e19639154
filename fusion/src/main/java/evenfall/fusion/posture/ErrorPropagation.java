package evenfall.fusion.posture;

import java.util.BitSet;

/**
 * How each unknown of a window moves its orientation, speed and place: the first-order error equations of strapdown
 * navigation (Titterton and Weston 2004, chapter 12), integrated alongside the motion.
 *
 * <p>Rows are kept only at the samples asked for. A row holds, for each unknown, nine numbers: change of the turn (x, y,
 * z, rad), of the speed (m/s) and of the place (m), per unit of the unknown.
 *
 * <p>Only the sensor's own errors are carried from sample to sample. A turn that happens at once, at the start or in a
 * jolt, leans all force after it alike, so its row is its axis times the integrals of that force.
 */
final class ErrorPropagation {

    static final int TURN = 0;
    static final int SPEED = 3;
    static final int PLACE = 6;

    private static final int ROW = 9;
    /** Behind a row: the force and the turn rate of the sample before. */
    private static final int FORCE = 9;

    private static final int RATE = 12;
    private static final int STATE = 15;

    private final MotionWindow window;
    private final Motion motion;
    private final double[][] forceBias = new double[3][STATE];
    private final double[][] forceScale = new double[3][STATE];
    private final double[][] rateScale = new double[3][STATE];
    private final double[][] rateBias = new double[3][STATE];
    /** The integrals of the specific force since the start, in the places of speed and place. */
    private final double[] force = new double[STATE];

    /** The same at each jolt, with its time behind; null where the jolt lies outside the window. */
    private final double[][] atJolt;

    private final BitSet jolted;

    /** The columns of world from sensor. */
    private final double[] axes = new double[9];

    private double timeS;
    private int next;

    private ErrorPropagation(MotionWindow window, Motion motion) {
        this.window = window;
        this.motion = motion;
        this.atJolt = new double[window.jolts().size()][];
        this.jolted = window.joltedSamples();
    }

    /**
     * The rows at samples {@code kept} (never falling, counted in the window).
     *
     * @return for each of them, unknowns × 9 numbers
     * @throws IllegalArgumentException if a sample comes before the one ahead of it: errors are carried forward only
     */
    static double[][][] rows(MotionWindow window, Motion motion, int[] kept) {
        ErrorPropagation run = new ErrorPropagation(window, motion);
        double[][][] rows = new double[kept.length][][];
        for (int k = 0; k < kept.length; k++) {
            if (k > 0 && kept[k] < kept[k - 1]) {
                throw new IllegalArgumentException("sample " + kept[k] + " after " + kept[k - 1]);
            }
            run.stepTo(kept[k]);
            rows[k] = run.rowsNow();
        }
        return rows;
    }

    private void stepTo(int sample) {
        for (; next <= sample; next++) {
            step(next);
        }
    }

    private void step(int i) {
        double now = motion.time(i);
        double half = i == 0 ? 0 : (now - timeS) / 2;
        timeS = now;
        double fx = motion.force(i, 0);
        double fy = motion.force(i, 1);
        double fz = motion.force(i, 2);
        push(force, fx, fy, fz, half);
        double w = motion.turn(i, 0);
        double x = motion.turn(i, 1);
        double y = motion.turn(i, 2);
        double z = motion.turn(i, 3);
        axes[0] = 1 - 2 * (y * y + z * z);
        axes[1] = 2 * (x * y + w * z);
        axes[2] = 2 * (x * z - w * y);
        axes[3] = 2 * (x * y - w * z);
        axes[4] = 1 - 2 * (x * x + z * z);
        axes[5] = 2 * (y * z + w * x);
        axes[6] = 2 * (x * z + w * y);
        axes[7] = 2 * (y * z - w * x);
        axes[8] = 1 - 2 * (x * x + y * y);
        for (int axis = 0; axis < 3; axis++) {
            axis(i, axis, axes[3 * axis], axes[3 * axis + 1], axes[3 * axis + 2], half);
        }
        for (int k = 0; i > 0 && jolted.get(i) && k < atJolt.length; k++) {
            if (window.jolts().get(k).index() == motion.from() + i) {
                double[] copy = force.clone();
                copy[RATE] = now;
                atJolt[k] = copy;
            }
        }
    }

    /** One more sample of the errors along one axis of the sensor, which points along (x, y, z) in the world. */
    private void axis(int i, int axis, double x, double y, double z, double half) {
        double read = motion.rawForce(i, axis);
        push(forceBias[axis], -x, -y, -z, half);
        push(forceScale[axis], -x * read, -y * read, -z * read, half);
        double rate = motion.rawRate(i, axis) - still(axis);
        turn(i, rateScale[axis], -x * rate, -y * rate, -z * rate, half);
        turn(i, rateBias[axis], -x, -y, -z, half);
    }

    private double still(int axis) {
        return axis == 0
                ? window.gyroBias().x()
                : axis == 1 ? window.gyroBias().y() : window.gyroBias().z();
    }

    /** Integrates a turn rate, and the change of force that the turn makes. */
    private void turn(int i, double[] s, double x, double y, double z, double half) {
        s[0] += half * (s[RATE] + x);
        s[1] += half * (s[RATE + 1] + y);
        s[2] += half * (s[RATE + 2] + z);
        s[RATE] = x;
        s[RATE + 1] = y;
        s[RATE + 2] = z;
        double fx = motion.force(i, 0);
        double fy = motion.force(i, 1);
        double fz = motion.force(i, 2);
        push(s, s[1] * fz - s[2] * fy, s[2] * fx - s[0] * fz, s[0] * fy - s[1] * fx, half);
    }

    /** Integrates a change of force. */
    private static void push(double[] s, double x, double y, double z, double half) {
        double vx = s[SPEED];
        double vy = s[SPEED + 1];
        double vz = s[SPEED + 2];
        s[SPEED] = vx + half * (s[FORCE] + x);
        s[SPEED + 1] = vy + half * (s[FORCE + 1] + y);
        s[SPEED + 2] = vz + half * (s[FORCE + 2] + z);
        s[PLACE] += half * (vx + s[SPEED]);
        s[PLACE + 1] += half * (vy + s[SPEED + 1]);
        s[PLACE + 2] += half * (vz + s[SPEED + 2]);
        s[FORCE] = x;
        s[FORCE + 1] = y;
        s[FORCE + 2] = z;
    }

    private double[][] rowsNow() {
        double[][] rows = new double[MotionErrors.FIXED + MotionErrors.JOLT * atJolt.length][ROW];
        double[] start = new double[STATE];
        start[RATE] = motion.time(0);
        for (int a = 0; a < 3; a++) {
            System.arraycopy(forceBias[a], 0, rows[a], 0, ROW);
            System.arraycopy(forceScale[a], 0, rows[3 + a], 0, ROW);
            System.arraycopy(rateScale[a], 0, rows[MotionErrors.RATE_SCALE + a], 0, ROW);
            System.arraycopy(rateBias[a], 0, rows[MotionErrors.RATE_BIAS + a], 0, ROW);
            jump(rows[MotionErrors.START_SPEED + a], a, start);
        }
        leap(rows[MotionErrors.START_TILT], 0, start);
        leap(rows[MotionErrors.START_TILT + 1], 1, start);
        for (int k = 0; k < atJolt.length; k++) {
            double[] since = atJolt[k];
            for (int a = 0; since != null && a < 3; a++) {
                int c = MotionErrors.FIXED + MotionErrors.JOLT * k + a;
                jump(rows[c], a, since);
                leap(rows[c + 3], a, since);
            }
        }
        return rows;
    }

    /** The row of a jump of the speed along one world axis. */
    private void jump(double[] row, int axis, double[] since) {
        row[SPEED + axis] = 1;
        row[PLACE + axis] = timeS - since[RATE];
    }

    /** The row of a turn at once about one world axis. */
    private void leap(double[] row, int axis, double[] since) {
        int left = (axis + 1) % 3;
        int right = (axis + 2) % 3;
        double spent = timeS - since[RATE];
        row[TURN + axis] = 1;
        row[SPEED + left] = since[SPEED + right] - force[SPEED + right];
        row[SPEED + right] = force[SPEED + left] - since[SPEED + left];
        row[PLACE + left] = since[PLACE + right] + spent * since[SPEED + right] - force[PLACE + right];
        row[PLACE + right] = force[PLACE + left] - since[PLACE + left] - spent * since[SPEED + left];
    }
}
