package evenfall.fusion.orientation;

import java.util.Arrays;

/**
 * What happens over a block of samples, as sums over its samples in the world as the filter has it: how errors of the
 * constants turn into errors of tilt and speed, and what the block adds to the doubt about them.
 */
final class BlockSums {

    /** Length of the block, s. */
    double seconds;

    /** Integral of the rotation matrix, s, by rows. */
    final double[] turn = new double[9];

    /** Integral of the upper two rows times each part of the turn rate, rad: row, column, part. */
    final double[] turnByRate = new double[18];

    /** Integral of specific force, m/s. */
    double forceX;

    double forceY;
    double forceZ;

    /** Integral of the rotation matrix, each column times its part of specific force, m/s, by rows. */
    final double[] turnByForce = new double[9];

    /** Variance of tilt that unevenness adds, rad², before its share. */
    double unevenTurn;

    /** Variance of speed that unevenness adds, (m/s)², before its share. */
    double unevenForce;

    /** Speed that clipped force may have hidden, m/s. */
    double hiddenSpeed;

    /** Variance of tilt that doubtful turns add, rad². */
    double doubtXX;

    double doubtXY;
    double doubtYY;

    void clear() {
        seconds = 0;
        Arrays.fill(turn, 0);
        Arrays.fill(turnByRate, 0);
        Arrays.fill(turnByForce, 0);
        forceX = 0;
        forceY = 0;
        forceZ = 0;
        unevenTurn = 0;
        unevenForce = 0;
        hiddenSpeed = 0;
        doubtXX = 0;
        doubtXY = 0;
        doubtYY = 0;
    }

    /**
     * Adds a sample.
     *
     * @param r rotation matrix by rows
     * @param rx turn rate less bias, sensor axes, rad/s, and so on
     * @param ax specific force as read, sensor axes, m/s², and so on
     */
    void add(double[] r, double duration, double rx, double ry, double rz, double ax, double ay, double az) {
        seconds += duration;
        double tx = rx * duration;
        double ty = ry * duration;
        double tz = rz * duration;
        double sx = ax * duration;
        double sy = ay * duration;
        double sz = az * duration;
        for (int row = 0; row < 9; row += 3) {
            turn[row] += r[row] * duration;
            turn[row + 1] += r[row + 1] * duration;
            turn[row + 2] += r[row + 2] * duration;
            turnByForce[row] += r[row] * sx;
            turnByForce[row + 1] += r[row + 1] * sy;
            turnByForce[row + 2] += r[row + 2] * sz;
        }
        for (int i = 0; i < 6; i++) {
            turnByRate[3 * i] += r[i] * tx;
            turnByRate[3 * i + 1] += r[i] * ty;
            turnByRate[3 * i + 2] += r[i] * tz;
        }
    }

    /** Adds a doubt about the turn about sensor axis {@code axis} of size {@code angle}, rad. */
    void doubt(double[] r, int axis, double angle) {
        double square = angle * angle;
        doubtXX += r[axis] * r[axis] * square;
        doubtXY += r[axis] * r[axis + 3] * square;
        doubtYY += r[axis + 3] * r[axis + 3] * square;
    }
}
