package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds where a sensor is still. The stream is cut into blocks of a tenth of a second; a run of blocks is still while
 * the force neither shakes nor moves away from the run's mean and the turn rate stays near the gyroscope's bias.
 *
 * <p>The limits (common practice, no source) leave room for a person who sways: 0.4 m/s² and 4 deg/s. The bias is the
 * median turn rate of all blocks that do not shake, so a gyroscope with a bias of several deg/s is no hindrance.
 * Samples on both sides of a gap are never of one stretch. Linear in the number of samples.
 */
public final class StillnessFinder {

    /** Shortest stretch returned, s. */
    public static final double SHORTEST_S = 0.5;

    private static final double BLOCK_S = 0.1;
    private static final double FORCE_SHAKE = 0.4;
    private static final double FORCE_WANDER = 0.4;
    private static final double RATE_SHAKE = Math.toRadians(3);
    private static final double RATE_OFF_BIAS = Math.toRadians(4);
    /** Bias and scale of a cheap accelerometer together stay below a tenth of gravity. */
    private static final double GRAVITY_ROOM = 0.1 * Gravity.STANDARD;

    private final SensorStream stream;
    private final int perBlock;
    private final int blocks;
    private final float[] mean;
    private final boolean[] calm;

    private StillnessFinder(SensorStream stream) {
        this.stream = stream;
        this.perBlock = Math.max(2, (int) Math.round(BLOCK_S * stream.rateHz()));
        this.blocks = stream.size() / perBlock;
        this.mean = new float[6 * blocks];
        this.calm = new boolean[blocks];
    }

    /** All still stretches of at least {@link #SHORTEST_S}, in order. */
    public static List<Stance> find(SensorStream stream) {
        StillnessFinder finder = new StillnessFinder(stream);
        finder.measureBlocks();
        finder.keepThoseNearTheBias();
        return finder.joinBlocks();
    }

    private void measureBlocks() {
        double[] sum = new double[6];
        double[] squares = new double[6];
        for (int b = 0; b < blocks; b++) {
            Arrays.fill(sum, 0);
            Arrays.fill(squares, 0);
            int from = b * perBlock;
            for (int i = from; i < from + perBlock; i++) {
                add(sum, squares, 0, stream.ax(i));
                add(sum, squares, 1, stream.ay(i));
                add(sum, squares, 2, stream.az(i));
                add(sum, squares, 3, stream.gx(i));
                add(sum, squares, 4, stream.gy(i));
                add(sum, squares, 5, stream.gz(i));
            }
            double force = 0;
            double rate = 0;
            for (int c = 0; c < 6; c++) {
                double m = sum[c] / perBlock;
                mean[6 * b + c] = (float) m;
                double variance = Math.max(0, squares[c] / perBlock - m * m);
                if (c < 3) {
                    force += variance;
                } else {
                    rate += variance;
                }
            }
            double size = Math.sqrt(square(mean[6 * b]) + square(mean[6 * b + 1]) + square(mean[6 * b + 2]));
            calm[b] = force < square(FORCE_SHAKE)
                    && rate < square(RATE_SHAKE)
                    && Math.abs(size - Gravity.STANDARD) < GRAVITY_ROOM
                    && stream.time(from + perBlock - 1) - stream.time(from) < 2 * BLOCK_S;
        }
    }

    private static void add(double[] sum, double[] squares, int c, double value) {
        sum[c] += value;
        squares[c] += value * value;
    }

    private static double square(double value) {
        return value * value;
    }

    private void keepThoseNearTheBias() {
        int count = 0;
        for (boolean b : calm) {
            count += b ? 1 : 0;
        }
        if (count == 0) {
            return;
        }
        double[] bias = new double[3];
        float[] values = new float[count];
        for (int c = 0; c < 3; c++) {
            int n = 0;
            for (int b = 0; b < blocks; b++) {
                if (calm[b]) {
                    values[n++] = mean[6 * b + 3 + c];
                }
            }
            Arrays.sort(values);
            bias[c] = values[count / 2];
        }
        for (int b = 0; b < blocks; b++) {
            double off = 0;
            for (int c = 0; c < 3; c++) {
                off += square(mean[6 * b + 3 + c] - bias[c]);
            }
            calm[b] &= off < square(RATE_OFF_BIAS);
        }
    }

    private List<Stance> joinBlocks() {
        List<Stance> found = new ArrayList<>();
        double[] sum = new double[6];
        int start = 0;
        int n = 0;
        for (int b = 0; b <= blocks; b++) {
            boolean goesOn = b < blocks && calm[b] && (n == 0 || (nearMean(b, sum, n) && joined(b)));
            if (!goesOn) {
                close(found, start, n, sum);
                Arrays.fill(sum, 0);
                n = 0;
                goesOn = b < blocks && calm[b];
            }
            if (goesOn) {
                start = n == 0 ? b : start;
                n++;
                for (int c = 0; c < 6; c++) {
                    sum[c] += mean[6 * b + c];
                }
            }
        }
        return found;
    }

    private boolean nearMean(int b, double[] sum, int n) {
        double off = 0;
        for (int c = 0; c < 3; c++) {
            off += square(mean[6 * b + c] - sum[c] / n);
        }
        return off < square(FORCE_WANDER);
    }

    private boolean joined(int b) {
        int i = b * perBlock;
        return stream.time(i) - stream.time(i - 1) < BLOCK_S;
    }

    private void close(List<Stance> found, int start, int n, double[] sum) {
        int from = start * perBlock;
        int to = from + n * perBlock;
        if (n > 0 && stream.time(to - 1) - stream.time(from) >= SHORTEST_S) {
            found.add(new Stance(
                    from,
                    to,
                    stream.time(from),
                    stream.time(to - 1),
                    new Vector3(sum[0] / n, sum[1] / n, sum[2] / n),
                    new Vector3(sum[3] / n, sum[4] / n, sum[5] / n)));
        }
    }
}
