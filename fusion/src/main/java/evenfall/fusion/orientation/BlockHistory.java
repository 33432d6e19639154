package evenfall.fusion.orientation;

import static evenfall.fusion.orientation.ErrorState.BIAS;
import static evenfall.fusion.orientation.ErrorState.MATRIX;
import static evenfall.fusion.orientation.ErrorState.MOST_LOOKS;
import static evenfall.fusion.orientation.ErrorState.OFFSET;
import static evenfall.fusion.orientation.ErrorState.PLACE;
import static evenfall.fusion.orientation.ErrorState.QUICK;
import static evenfall.fusion.orientation.ErrorState.SCALE;
import static evenfall.fusion.orientation.ErrorState.SIZE;
import static evenfall.fusion.orientation.ErrorState.SPEED;
import static evenfall.fusion.orientation.ErrorState.TILT;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Keeps what a {@link MotionFilter} did block by block, and goes through it backward to lay what came later onto the
 * tilt of each sample.
 *
 * <p>The smoothed error is {@code -P l}, with an adjoint {@code l} that runs back over looks,
 * {@code l <- l - h (k·l + surprise)}, and over blocks, {@code l <- Fᵀ l}; no matrix is inverted (Bierman 1973,
 * Automatica 9:503, "Fixed interval smoothing with discrete measurements"; from memory). Within a block the correction
 * runs on a straight line. Where the history is full, what has {@value #AHEAD} blocks after it is laid on and dropped.
 */
final class BlockHistory implements LookLog {

    /** Blocks kept at most. */
    private static final int CAPACITY = 7200;

    /** Blocks looked ahead over at least, where there are so many. */
    private static final int AHEAD = 1200;

    /** Corrections of an entry. */
    private static final int EACH = 5;

    /** Of a look: part, surprise, scale, row. */
    private static final int LOOK = 3 + SIZE;

    /** Of a block: its sums, its correction of the tilt, the covariance's rows of tilt and bias, its looks. */
    private static final int RATE_AT = 9;

    private static final int FORCE_AT = 27;
    private static final int BY_FORCE_AT = 30;
    private static final int SECONDS_AT = 39;
    private static final int CORRECTION_AT = 40;
    private static final int BIAS_CORRECTION_AT = 42;
    private static final int ROWS_AT = 45;
    private static final int BIAS_ROWS_AT = ROWS_AT + 2 * SIZE;
    private static final int LOOKS_AT = BIAS_ROWS_AT + 3 * SIZE;
    private static final int STRIDE = LOOKS_AT + MOST_LOOKS * LOOK;

    private static final Attitude NO_TURN = new Attitude();

    private final OrientationTrack.Builder rows;
    private final double[][] blocks = new double[CAPACITY][];
    private final int[] looks = new int[CAPACITY];

    /** First row after each entry. */
    private final int[] ends = new int[CAPACITY];

    private final @Nullable Start[] starts = new Start[CAPACITY];
    private int size;
    private int firstRow;

    /** Correction at the end of the last entry laid on. */
    private double lastX;

    private double lastY;

    /** What all entries laid on turned too little about the vertical, rad: nothing sees it, but the bias tells. */
    private double heading;

    private final double[] adjoint = new double[SIZE];

    /**
     * Corrections of each entry, x and y: of a block after its looks and before them, of a start at its end and at its
     * beginning; then by how much it turned too little about the vertical.
     */
    private final double[] corrections = new double[EACH * CAPACITY];

    /** A history whose corrections go onto {@code rows}, which hold what the filter said before each look. */
    BlockHistory(OrientationTrack.Builder rows) {
        this.rows = rows;
    }

    /** Where a filter started: the turn laid on its rows, and the covariance after it. */
    private static final class Start {

        final Attitude tilt = new Attitude();
        final double[] covariance;

        Start(Attitude tilt, double[] covariance) {
            this.tilt.setProduct(tilt, this.tilt);
            this.covariance = covariance.clone();
        }
    }

    private double[] open() {
        if (size == CAPACITY) {
            smooth(CAPACITY - AHEAD);
        }
        double[] block = blocks[size];
        if (block == null) {
            block = new double[STRIDE];
            blocks[size] = block;
        }
        looks[size] = 0;
        starts[size] = null;
        ends[size] = rows.size();
        size++;
        return block;
    }

    private static void keep(BlockSums sums, double[] block) {
        System.arraycopy(sums.turn, 0, block, 0, 9);
        System.arraycopy(sums.turnByRate, 0, block, RATE_AT, 18);
        block[FORCE_AT] = sums.forceX;
        block[FORCE_AT + 1] = sums.forceY;
        block[FORCE_AT + 2] = sums.forceZ;
        System.arraycopy(sums.turnByForce, 0, block, BY_FORCE_AT, 9);
        block[SECONDS_AT] = sums.seconds;
    }

    @Override
    public void begin(BlockSums sums) {
        keep(sums, open());
    }

    @Override
    public void look(int part, double surprise, double[] row, double scale) {
        double[] block = blocks[size - 1];
        int at = LOOKS_AT + LOOK * looks[size - 1]++;
        block[at] = part;
        block[at + 1] = surprise;
        block[at + 2] = scale;
        System.arraycopy(row, 0, block, at + 3, SIZE);
    }

    @Override
    public void end(ErrorState errors) {
        double[] block = blocks[size - 1];
        block[CORRECTION_AT] = errors.correction[TILT];
        block[CORRECTION_AT + 1] = errors.correction[TILT + 1];
        System.arraycopy(errors.covariance, 0, block, ROWS_AT, 2 * SIZE);
        System.arraycopy(errors.covariance, BIAS * SIZE, block, BIAS_ROWS_AT, 3 * SIZE);
        System.arraycopy(errors.correction, BIAS, block, BIAS_CORRECTION_AT, 3);
    }

    @Override
    public void started(ErrorState errors, BlockSums sums, Attitude tilt) {
        keep(sums, open());
        starts[size - 1] = new Start(tilt, errors.covariance);
    }

    /** Lays all corrections on. */
    void finish() {
        smooth(size);
    }

    private void smooth(int count) {
        Arrays.fill(adjoint, 0);
        for (int e = size - 1; e >= 0; e--) {
            Start start = starts[e];
            if (start == null) {
                backOverBlock(e);
            } else {
                backOverStart(e, start);
            }
        }
        for (int e = 0; e < count; e++) {
            layOn(e);
        }
        drop(count);
    }

    private void backOverBlock(int e) {
        double[] block = blocks[e];
        double[] l = adjoint;
        double x = -dot(block, ROWS_AT, l);
        double y = -dot(block, ROWS_AT + SIZE, l);
        double heading = 0;
        for (int k = 0; k < 3; k++) {
            double bias = block[BIAS_CORRECTION_AT + k] - dot(block, BIAS_ROWS_AT + k * SIZE, l);
            heading -= block[6 + k] * bias;
        }
        correct(e, x, y, x + block[CORRECTION_AT], y + block[CORRECTION_AT + 1], heading);
        for (int i = looks[e] - 1; i >= 0; i--) {
            int at = LOOKS_AT + LOOK * i;
            l[(int) block[at]] -= block[at + 1] + block[at + 2] * dot(block, at + 3, l);
        }
        turnBack(block);
    }

    /** What is known of the constants later tells how the turn during the start was off. */
    private void backOverStart(int e, Start start) {
        double[] block = blocks[e];
        double[] p = start.covariance;
        double[] l = adjoint;
        double x = -dot(p, TILT * SIZE, l);
        double y = -dot(p, (TILT + 1) * SIZE, l);
        double beginX = x;
        double beginY = y;
        double heading = 0;
        for (int k = 0; k < 3; k++) {
            double bias = -dot(p, (BIAS + k) * SIZE, l);
            beginX += block[k] * bias;
            beginY += block[3 + k] * bias;
            heading -= block[6 + k] * bias;
        }
        for (int k = 0; k < 9; k++) {
            double share = -dot(p, (MATRIX + k) * SIZE, l);
            beginX += block[RATE_AT + k] * share;
            beginY += block[RATE_AT + 9 + k] * share;
        }
        correct(e, x, y, beginX, beginY, heading);
        Arrays.fill(l, 0, QUICK, 0);
    }

    private void correct(int e, double x, double y, double otherX, double otherY, double heading) {
        corrections[EACH * e] = x;
        corrections[EACH * e + 1] = y;
        corrections[EACH * e + 2] = otherX;
        corrections[EACH * e + 3] = otherY;
        corrections[EACH * e + 4] = heading;
    }

    private static double dot(double[] a, int from, double[] b) {
        double sum = 0;
        for (int j = 0; j < SIZE; j++) {
            sum += a[from + j] * b[j];
        }
        return sum;
    }

    /** The adjoint before a block: the transposed transition (see {@link ErrorState}) times the one after it. */
    private void turnBack(double[] block) {
        double[] l = adjoint;
        double half = block[SECONDS_AT] / 2;
        double vx = l[SPEED] + half * l[PLACE];
        double vy = l[SPEED + 1] + half * l[PLACE + 1];
        double vz = l[SPEED + 2] + half * l[PLACE + 2];
        double fx = block[FORCE_AT];
        double fy = block[FORCE_AT + 1];
        double fz = block[FORCE_AT + 2];
        double middleX = fy * vz - fz * vy;
        double middleY = fz * vx - fx * vz;
        double x = l[TILT] + middleX / 2;
        double y = l[TILT + 1] + middleY / 2;
        l[TILT] = x + middleX / 2;
        l[TILT + 1] = y + middleY / 2;
        l[SPEED] = vx + half * l[PLACE];
        l[SPEED + 1] = vy + half * l[PLACE + 1];
        l[SPEED + 2] = vz + half * l[PLACE + 2];
        for (int k = 0; k < 3; k++) {
            l[BIAS + k] -= block[k] * x + block[3 + k] * y;
            l[OFFSET + k] -= block[k] * vx + block[3 + k] * vy + block[6 + k] * vz;
            l[SCALE + k] -=
                    block[BY_FORCE_AT + k] * vx + block[BY_FORCE_AT + 3 + k] * vy + block[BY_FORCE_AT + 6 + k] * vz;
        }
        for (int k = 0; k < 9; k++) {
            l[MATRIX + k] -= block[RATE_AT + k] * x + block[RATE_AT + 9 + k] * y;
        }
    }

    private void layOn(int e) {
        double endX = corrections[EACH * e];
        double endY = corrections[EACH * e + 1];
        double otherX = corrections[EACH * e + 2];
        double otherY = corrections[EACH * e + 3];
        Start start = starts[e];
        if (start == null) {
            layOn(e, NO_TURN, lastX, lastY, otherX, otherY);
        } else {
            layOn(e, start.tilt, otherX, otherY, endX, endY);
        }
        heading += corrections[EACH * e + 4];
        firstRow = ends[e];
        lastX = endX;
        lastY = endY;
    }

    private void layOn(int e, Attitude tilt, double fromX, double fromY, double toX, double toY) {
        double step = 1.0 / Math.max(1, ends[e] - firstRow);
        double turned = corrections[EACH * e + 4];
        double part = 0;
        for (int row = firstRow; row < ends[e]; row++) {
            part += step;
            double half = (heading + part * turned) / 2;
            double x = fromX + part * (toX - fromX);
            double y = fromY + part * (toY - fromY);
            rows.turn(row, tilt, x, y, Math.cos(half), Math.sin(half));
        }
    }

    private void drop(int count) {
        for (int e = count; e < size; e++) {
            double[] free = blocks[e - count];
            blocks[e - count] = blocks[e];
            blocks[e] = free;
            looks[e - count] = looks[e];
            ends[e - count] = ends[e];
            starts[e - count] = starts[e];
        }
        size -= count;
    }
}
