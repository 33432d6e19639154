package evenfall.fusion.orientation;

import java.util.Arrays;

/**
 * Kalman filter over the errors of what a strapdown integration carries: tilt (2, world axes x and y), speed (3), place
 * (3), the gyroscope's bias (3) and matrix (9, by rows), the accelerometer's offset (3) and scale (3).
 *
 * <p>The errors are zero after each {@link #correction} has been taken over, so only their covariance is kept. The
 * heading is no part: nothing tells it, and turning the world about the vertical changes nothing else.
 *
 * <p>Each loop over a row is a method of its own: the Java machine then compiles each once, as a whole. With loops within
 * loops it begins in the middle of each of them, and again as a whole, and a short run pays for all of these.
 */
final class ErrorState {

    static final int TILT = 0;
    static final int SPEED = 2;
    static final int PLACE = 5;
    static final int BIAS = 8;
    static final int MATRIX = 11;
    static final int OFFSET = 20;
    static final int SCALE = 23;
    static final int SIZE = 26;

    /** Those that change quickly: tilt, speed and place. */
    static final int QUICK = 8;

    /** Looks in one block at most: a multiple of three, for three are settled at a time. */
    static final int MOST_LOOKS = 9;

    private final MotionParams params;

    /** Covariance by rows. */
    final double[] covariance = new double[SIZE * SIZE];

    /** What the looks of this block have found so far. */
    final double[] correction = new double[SIZE];

    private final double[] next = new double[QUICK * SIZE];
    private final double[] middle = new double[2 * SIZE];

    /** Of this block's looks: the row of the covariance before each, and one over the variance of what it differed by. */
    private final double[][] rows = new double[MOST_LOOKS][SIZE];

    private final double[] scales = new double[MOST_LOOKS];
    private int looks;

    ErrorState(MotionParams params) {
        this.params = params;
        constant(BIAS, 3, params.gyroscope().bias());
        constant(MATRIX, 9, params.gyroscope().cross());
        for (int axis = 0; axis < 3; axis++) {
            constant(MATRIX + 4 * axis, 1, params.gyroscope().scale());
        }
        constant(OFFSET, 3, params.accelerometer().offset());
        constant(SCALE, 3, params.accelerometer().scale());
    }

    private void constant(int from, int count, double sigma) {
        for (int i = from; i < from + count; i++) {
            covariance[i * SIZE + i] = sigma * sigma;
        }
    }

    double variance(int i) {
        return covariance[i * SIZE + i];
    }

    void addVariance(int i, double variance) {
        covariance[i * SIZE + i] += variance;
    }

    /** Forgets tilt, speed and place, each with the constants' share in it. */
    void forgetQuick() {
        Arrays.fill(covariance, 0, QUICK * SIZE, 0);
        for (int i = QUICK; i < SIZE; i++) {
            Arrays.fill(covariance, i * SIZE, i * SIZE + QUICK, 0);
        }
    }

    /** Lets a block pass. */
    void pass(BlockSums block) {
        carryRows(block);
        carryColumns(block);
        addNoise(block);
        Arrays.fill(correction, 0);
    }

    /** The quick rows of the transition times the covariance, into {@link #next}. */
    private void carryRows(BlockSums b) {
        double[] p = covariance;
        double[] n = next;
        for (int i = 0; i < 2; i++) {
            System.arraycopy(p, i * SIZE, n, i * SIZE, SIZE);
            takeThree(i * SIZE, b.turn, 3 * i, BIAS);
            takeThree(i * SIZE, b.turnByRate, 9 * i, MATRIX);
            takeThree(i * SIZE, b.turnByRate, 9 * i + 3, MATRIX + 3);
            takeThree(i * SIZE, b.turnByRate, 9 * i + 6, MATRIX + 6);
            middle(i * SIZE);
        }
        System.arraycopy(p, SPEED * SIZE, n, SPEED * SIZE, 3 * SIZE);
        add(n, SPEED * SIZE, b.forceZ, middle, SIZE);
        add(n, (SPEED + 1) * SIZE, -b.forceZ, middle, 0);
        add(n, (SPEED + 2) * SIZE, b.forceY, middle, 0);
        add(n, (SPEED + 2) * SIZE, -b.forceX, middle, SIZE);
        for (int i = 0; i < 3; i++) {
            int row = (SPEED + i) * SIZE;
            takeThree(row, b.turn, 3 * i, OFFSET);
            takeThree(row, b.turnByForce, 3 * i, SCALE);
            carryPlace((PLACE + i) * SIZE, row, b.seconds / 2);
        }
    }

    private void middle(int row) {
        for (int j = row; j < row + SIZE; j++) {
            middle[j] = 0.5 * (covariance[j] + next[j]);
        }
    }

    private void carryPlace(int place, int speed, double half) {
        double[] p = covariance;
        double[] n = next;
        for (int j = 0; j < SIZE; j++) {
            n[place + j] = p[place + j] + half * (p[speed + j] + n[speed + j]);
        }
    }

    private static void add(double[] to, int at, double factor, double[] from, int start) {
        for (int j = 0; j < SIZE; j++) {
            to[at + j] += factor * from[start + j];
        }
    }

    /** Takes three rows of the covariance from {@code part} on, each times a factor, from a row of {@link #next}. */
    private void takeThree(int row, double[] factors, int at, int part) {
        double[] p = covariance;
        double[] n = next;
        double f = factors[at];
        double g = factors[at + 1];
        double h = factors[at + 2];
        int first = part * SIZE;
        int second = first + SIZE;
        int third = second + SIZE;
        for (int j = 0; j < SIZE; j++) {
            n[row + j] -= f * p[first + j] + g * p[second + j] + h * p[third + j];
        }
    }

    /** The quick columns of {@link #next} times the transition, and both into the covariance. */
    private void carryColumns(BlockSums b) {
        for (int i = 0; i < QUICK; i++) {
            carryColumns(b, i, i * SIZE);
        }
    }

    private void carryColumns(BlockSums b, int i, int row) {
        double[] p = covariance;
        double[] n = next;
        double half = b.seconds / 2;
        double tx = n[row];
        double ty = n[row + 1];
        for (int k = 0; k < 3; k++) {
            tx -= b.turn[k] * n[row + BIAS + k];
            ty -= b.turn[3 + k] * n[row + BIAS + k];
        }
        for (int k = 0; k < 9; k++) {
            tx -= b.turnByRate[k] * n[row + MATRIX + k];
            ty -= b.turnByRate[9 + k] * n[row + MATRIX + k];
        }
        double mx = 0.5 * (n[row] + tx);
        double my = 0.5 * (n[row + 1] + ty);
        p[row] = tx;
        p[row + 1] = ty;
        for (int c = 0; c < 3; c++) {
            double before = n[row + SPEED + c];
            double v = before + (c == 0 ? my * b.forceZ : c == 1 ? -mx * b.forceZ : mx * b.forceY - my * b.forceX);
            for (int k = 0; k < 3; k++) {
                v -= b.turn[3 * c + k] * n[row + OFFSET + k] + b.turnByForce[3 * c + k] * n[row + SCALE + k];
            }
            p[row + SPEED + c] = v;
            p[row + PLACE + c] = n[row + PLACE + c] + half * (before + v);
        }
        System.arraycopy(n, row + QUICK, p, row + QUICK, SIZE - QUICK);
        for (int j = QUICK; j < SIZE; j++) {
            p[j * SIZE + i] = n[row + j];
        }
    }

    private void addNoise(BlockSums b) {
        double turn = square(params.growth().tilt()) * b.seconds
                + square(params.growth().unevenTurn()) * b.unevenTurn;
        addVariance(TILT, turn + b.doubtXX);
        addVariance(TILT + 1, turn + b.doubtYY);
        covariance[1] += b.doubtXY;
        covariance[SIZE] += b.doubtXY;
        double speed = square(params.growth().speed()) * b.seconds
                + square(params.growth().unevenForce()) * b.unevenForce
                + square(b.hiddenSpeed);
        double bias = square(params.gyroscope().biasDrift()) * b.seconds;
        double offset = square(params.accelerometer().offsetDrift()) * b.seconds;
        for (int k = 0; k < 3; k++) {
            addVariance(SPEED + k, speed);
            addVariance(BIAS + k, bias);
            addVariance(OFFSET + k, offset);
        }
    }

    /**
     * Takes a look at one part. What it tells of the others waits for {@link #settle}: until then only the rows that
     * are looked at are brought up to date.
     *
     * @param part which
     * @param value what the part is seen to be, beside what is held before this block's looks
     * @param variance of that
     * @param log told of it
     */
    void look(int part, double value, double variance, LookLog log) {
        double[] k = rows[looks];
        System.arraycopy(covariance, part * SIZE, k, 0, SIZE);
        for (int before = 0; before < looks; before++) {
            add(k, 0, -scales[before] * rows[before][part], rows[before], 0);
        }
        double scale = 1 / (k[part] + variance);
        double surprise = (value - correction[part]) * scale;
        add(correction, 0, surprise, k, 0);
        scales[looks++] = scale;
        log.look(part, surprise, k, scale);
    }

    /** Takes what this block's looks have told out of the covariance: three at a time, and each pair of parts once. */
    void settle() {
        for (int spare = looks; spare % 3 != 0; spare++) {
            scales[spare] = 0;
        }
        for (int first = 0; first < looks; first += 3) {
            settle(scales[first], rows[first], scales[first + 1], rows[first + 1], scales[first + 2], rows[first + 2]);
        }
        looks = 0;
    }

    private void settle(double s, double[] k, double t, double[] l, double u, double[] m) {
        for (int i = 0; i < SIZE; i++) {
            settle(i, s * k[i], k, t * l[i], l, u * m[i], m);
        }
    }

    private void settle(int i, double s, double[] k, double t, double[] l, double u, double[] m) {
        double[] p = covariance;
        int row = i * SIZE;
        int column = row + i;
        for (int j = i; j < SIZE; j++) {
            double rest = p[row + j] - (s * k[j] + t * l[j] + u * m[j]);
            p[row + j] = rest;
            p[column] = rest;
            column += SIZE;
        }
    }

    static double square(double value) {
        return value * value;
    }
}
