package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Rotations;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** The written-out step over a block and the look against the textbook ones in general-purpose matrices. */
class ErrorStateTest {

    private static final int N = ErrorState.SIZE;

    @Test
    void agreesWithTheTextbookStep() {
        SplittableRandom random = new SplittableRandom(26);
        MotionParams params = MotionParams.STANDARD;
        ErrorState state = new ErrorState(params);
        for (int i = 0; i < ErrorState.QUICK; i++) {
            state.addVariance(i, random.nextDouble(0.01, 0.1));
        }
        RealMatrix p = matrix(state.covariance);
        for (int step = 0; step < 60; step++) {
            BlockSums block = block(random);
            RealMatrix f = transition(block);
            p = f.multiply(p).multiply(f.transpose());
            addNoise(p, params, block);
            state.pass(block);
            agree(state, p, step);
            RealMatrix found = new Array2DRowRealMatrix(N, 1);
            int looks = 1 + step % ErrorState.MOST_LOOKS;
            for (int look = 0; look < looks; look++) {
                int part = random.nextInt(ErrorState.MATRIX);
                double value = random.nextDouble(-0.1, 0.1);
                double variance = random.nextDouble(0.001, 0.1);
                RealMatrix k = p.getColumnMatrix(part).scalarMultiply(1 / (p.getEntry(part, part) + variance));
                found = found.add(k.scalarMultiply(value - found.getEntry(part, 0)));
                p = p.subtract(k.multiply(p.getRowMatrix(part)));
                state.look(part, value, variance, LookLog.NONE);
            }
            state.settle();
            agree(state, p, step);
            for (int i = 0; i < N; i++) {
                assertThat(state.correction[i])
                        .as("seed 26, step %d, part %d", step, i)
                        .isCloseTo(found.getEntry(i, 0), within(1e-12));
            }
        }
    }

    private static void agree(ErrorState state, RealMatrix p, int step) {
        assertThat(matrix(state.covariance).subtract(p).getNorm())
                .as("seed 26, step %d", step)
                .isLessThan(1e-11 * Math.max(1, p.getNorm()));
    }

    private static RealMatrix matrix(double[] rows) {
        RealMatrix m = new Array2DRowRealMatrix(N, N);
        for (int i = 0; i < N * N; i++) {
            m.setEntry(i / N, i % N, rows[i]);
        }
        return m;
    }

    private static BlockSums block(SplittableRandom random) {
        BlockSums block = new BlockSums();
        double[] r = new double[9];
        for (int i = 0; i < 20; i++) {
            double[][] turn = Rotations.random(random).toMatrix();
            for (int k = 0; k < 9; k++) {
                r[k] = turn[k / 3][k % 3];
            }
            block.add(
                    r,
                    0.005,
                    random.nextDouble(-5, 5),
                    random.nextDouble(-5, 5),
                    random.nextDouble(-5, 5),
                    random.nextDouble(-20, 20),
                    random.nextDouble(-20, 20),
                    random.nextDouble(-20, 20));
        }
        block.forceX = random.nextDouble(-1, 1);
        block.forceY = random.nextDouble(-1, 1);
        block.forceZ = random.nextDouble(0, 2);
        block.unevenTurn = random.nextDouble(1e-6);
        block.unevenForce = random.nextDouble(1e-3);
        block.doubt(r, 1, 0.02);
        return block;
    }

    /** Tilt moves by minus turn times bias and minus turn and rate times matrix; speed by mean tilt cross force. */
    private static RealMatrix transition(BlockSums b) {
        RealMatrix tilt = new Array2DRowRealMatrix(3, N);
        for (int i = 0; i < 2; i++) {
            tilt.setEntry(i, ErrorState.TILT + i, 1);
            for (int k = 0; k < 3; k++) {
                tilt.setEntry(i, ErrorState.BIAS + k, -b.turn[3 * i + k]);
            }
            for (int k = 0; k < 9; k++) {
                tilt.setEntry(i, ErrorState.MATRIX + k, -b.turnByRate[9 * i + k]);
            }
        }
        RealMatrix before = new Array2DRowRealMatrix(3, N);
        before.setEntry(0, 0, 1);
        before.setEntry(1, 1, 1);
        RealMatrix cross = new Array2DRowRealMatrix(
                new double[][] {{0, b.forceZ, -b.forceY}, {-b.forceZ, 0, b.forceX}, {b.forceY, -b.forceX, 0}});
        RealMatrix gain = cross.multiply(tilt.add(before).scalarMultiply(0.5));
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                gain.addToEntry(i, ErrorState.OFFSET + k, -b.turn[3 * i + k]);
                gain.addToEntry(i, ErrorState.SCALE + k, -b.turnByForce[3 * i + k]);
            }
        }
        RealMatrix f = MatrixUtils.createRealIdentityMatrix(N);
        f.setSubMatrix(tilt.getSubMatrix(0, 1, 0, N - 1).getData(), 0, 0);
        for (int i = 0; i < 3; i++) {
            f.addToEntry(ErrorState.PLACE + i, ErrorState.SPEED + i, b.seconds);
            for (int j = 0; j < N; j++) {
                f.addToEntry(ErrorState.SPEED + i, j, gain.getEntry(i, j));
                f.addToEntry(ErrorState.PLACE + i, j, b.seconds / 2 * gain.getEntry(i, j));
            }
        }
        return f;
    }

    private static void addNoise(RealMatrix p, MotionParams params, BlockSums b) {
        double turn = Math.pow(params.growth().tilt(), 2) * b.seconds
                + Math.pow(params.growth().unevenTurn(), 2) * b.unevenTurn;
        p.addToEntry(0, 0, turn + b.doubtXX);
        p.addToEntry(1, 1, turn + b.doubtYY);
        p.addToEntry(0, 1, b.doubtXY);
        p.addToEntry(1, 0, b.doubtXY);
        for (int k = 0; k < 3; k++) {
            p.addToEntry(
                    ErrorState.SPEED + k,
                    ErrorState.SPEED + k,
                    Math.pow(params.growth().speed(), 2) * b.seconds
                            + Math.pow(params.growth().unevenForce(), 2) * b.unevenForce);
            p.addToEntry(
                    ErrorState.BIAS + k,
                    ErrorState.BIAS + k,
                    Math.pow(params.gyroscope().biasDrift(), 2) * b.seconds);
            p.addToEntry(
                    ErrorState.OFFSET + k,
                    ErrorState.OFFSET + k,
                    Math.pow(params.accelerometer().offsetDrift(), 2) * b.seconds);
        }
    }
}
