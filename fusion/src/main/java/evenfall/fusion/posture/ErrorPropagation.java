package evenfall.fusion.posture;

import evenfall.ingest.recording.SensorStream;

/**
 * How each unknown of a window moves its orientation, speed and place: the first-order error equations of strapdown
 * navigation (Titterton and Weston 2004, chapter 12), integrated alongside the motion.
 *
 * <p>Rows are kept only at the samples asked for. A row holds, for each unknown, nine numbers: change of the turn (x, y,
 * z, rad), of the speed (m/s) and of the place (m), per unit of the unknown.
 */
final class ErrorPropagation {

    static final int TURN = 0;
    static final int SPEED = 3;
    static final int PLACE = 6;

    private final MotionWindow window;
    private final Motion motion;
    private final int unknowns;
    private final double[][] state;
    private final double[][] push;

    private ErrorPropagation(MotionWindow window, Motion motion) {
        this.window = window;
        this.motion = motion;
        this.unknowns = MotionErrors.FIXED + MotionErrors.JOLT * window.jolts().size();
        this.state = new double[unknowns][9];
        this.push = new double[unknowns][6];
    }

    /**
     * The rows at samples {@code kept} (rising, counted in the window).
     *
     * @return for each of them, unknowns × 9 numbers
     */
    static double[][][] rows(MotionWindow window, Motion motion, int[] kept) {
        ErrorPropagation run = new ErrorPropagation(window, motion);
        double[][][] rows = new double[kept.length][][];
        run.start();
        int next = 0;
        for (int i = 0; i < motion.size() && next < kept.length; i++) {
            if (i > 0) {
                run.step(i);
            }
            while (next < kept.length && kept[next] == i) {
                rows[next++] = run.copy();
            }
        }
        return rows;
    }

    private double[][] copy() {
        double[][] copy = new double[unknowns][];
        for (int c = 0; c < unknowns; c++) {
            copy[c] = state[c].clone();
        }
        return copy;
    }

    private void start() {
        for (int a = 0; a < 3; a++) {
            state[MotionErrors.START_SPEED + a][SPEED + a] = 1;
        }
        state[MotionErrors.START_TILT][TURN] = 1;
        state[MotionErrors.START_TILT + 1][TURN + 1] = 1;
        pushes(0, push);
    }

    private final double[] before = new double[6];

    private void step(int i) {
        double dt = motion.time(i) - motion.time(i - 1);
        for (int c = 0; c < unknowns; c++) {
            double[] s = state[c];
            System.arraycopy(push[c], 0, before, 0, 6);
            turnRate(i, c, push[c]);
            for (int a = 0; a < 3; a++) {
                s[TURN + a] += dt / 2 * (before[a] + push[c][a]);
            }
            forceChange(i, c, s, push[c]);
            for (int a = 0; a < 3; a++) {
                double speed = s[SPEED + a];
                s[SPEED + a] += dt / 2 * (before[3 + a] + push[c][3 + a]);
                s[PLACE + a] += dt / 2 * (speed + s[SPEED + a]);
            }
        }
        for (int k = 0; k < window.jolts().size(); k++) {
            if (window.jolts().get(k).index() == motion.from() + i) {
                for (int a = 0; a < 3; a++) {
                    int c = MotionErrors.FIXED + MotionErrors.JOLT * k + a;
                    state[c][SPEED + a] += 1;
                    state[c + 3][TURN + a] += 1;
                    forceChange(i, c + 3, state[c + 3], push[c + 3]);
                }
            }
        }
    }

    private void pushes(int i, double[][] out) {
        for (int c = 0; c < unknowns; c++) {
            turnRate(i, c, out[c]);
            forceChange(i, c, state[c], out[c]);
        }
    }

    /** World turn rate per unit of unknown {@code c}, into the first three places of {@code out}. */
    private void turnRate(int i, int c, double[] out) {
        out[0] = 0;
        out[1] = 0;
        out[2] = 0;
        if (c >= MotionErrors.RATE_SCALE && c < MotionErrors.RATE_SCALE + 3) {
            int axis = c - MotionErrors.RATE_SCALE;
            column(i, axis, -rate(i, axis), out, 0);
        } else if (c >= MotionErrors.RATE_BIAS && c < MotionErrors.RATE_BIAS + 3) {
            column(i, c - MotionErrors.RATE_BIAS, -1, out, 0);
        }
    }

    /** World force per unit of unknown {@code c}, into the last three places of {@code out}. */
    private void forceChange(int i, int c, double[] s, double[] out) {
        double fx = motion.force(i).x();
        double fy = motion.force(i).y();
        double fz = motion.force(i).z();
        out[3] = s[1] * fz - s[2] * fy;
        out[4] = s[2] * fx - s[0] * fz;
        out[5] = s[0] * fy - s[1] * fx;
        if (c < 3) {
            column(i, c, -1, out, 3);
        } else if (c < MotionErrors.RATE_SCALE) {
            column(i, c - 3, -force(i, c - 3), out, 3);
        }
    }

    /** Adds {@code factor} times a column of world from sensor. */
    private void column(int i, int axis, double factor, double[] out, int at) {
        var q = motion.orientation(i);
        double w = q.w();
        double x = q.x();
        double y = q.y();
        double z = q.z();
        switch (axis) {
            case 0 -> {
                out[at] += factor * (1 - 2 * (y * y + z * z));
                out[at + 1] += factor * 2 * (x * y + w * z);
                out[at + 2] += factor * 2 * (x * z - w * y);
            }
            case 1 -> {
                out[at] += factor * 2 * (x * y - w * z);
                out[at + 1] += factor * (1 - 2 * (x * x + z * z));
                out[at + 2] += factor * 2 * (y * z + w * x);
            }
            default -> {
                out[at] += factor * 2 * (x * z + w * y);
                out[at + 1] += factor * 2 * (y * z - w * x);
                out[at + 2] += factor * (1 - 2 * (x * x + y * y));
            }
        }
    }

    private double force(int i, int axis) {
        SensorStream s = motion.stream();
        int k = motion.from() + i;
        return axis == 0 ? s.ax(k) : axis == 1 ? s.ay(k) : s.az(k);
    }

    private double rate(int i, int axis) {
        SensorStream s = motion.stream();
        int k = motion.from() + i;
        return axis == 0
                ? s.gx(k) - window.gyroBias().x()
                : axis == 1
                        ? s.gy(k) - window.gyroBias().y()
                        : s.gz(k) - window.gyroBias().z();
    }
}
