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
 * Samples on both sides of a pause of a tenth of a second or more are never of one stretch. Linear in the number of samples. A stream may grow: then the
 * bias is that of the blocks so far, and stretches are found again where it moved.
 */
public final class StillnessFinder {

    /** Shortest stretch returned, s. */
    public static final double SHORTEST_S = 0.5;

    private static final double BLOCK_S = 0.1;
    /** In a block the force shakes by less than this, root of the summed variances, */
    private static final double FORCE_SHAKE_MS2 = 0.4;
    /** and its mean lies no further from that of the run. */
    private static final double FORCE_WANDER_MS2 = 0.4;
    /** The turn rate shakes by less than this, likewise, rad/s, */
    private static final double RATE_SHAKE = Math.toRadians(3);
    /** and lies no further from the gyroscope's bias, rad/s. */
    private static final double RATE_OFF_BIAS = Math.toRadians(4);
    /** A block that takes longer than so many times its length holds a pause. */
    private static final double WITH_PAUSE = 2;
    /** Bias and scale of a cheap accelerometer together stay below a tenth of gravity. */
    private static final double GRAVITY_ROOM = 0.1 * Gravity.STANDARD;

    /** The bias is taken anew whenever the blocks that do not shake are so many times as many. */
    private static final double BIAS_ANEW = 1.1;
    /** A bias that moved by less leaves what was found as it is, rad/s. */
    private static final double SAME_BIAS = Math.toRadians(0.2);

    private final int perBlock;
    private int blocks;
    private float[] mean = new float[6 * 64];
    private boolean[] calm = new boolean[64];
    private int calmBlocks;
    private int calmBlocksAtBias;
    private final double[] bias = new double[3];

    private final List<Stance> found = new ArrayList<>();
    private final double[] sum = new double[6];
    private int start;
    private int joined;
    private int n;

    /** A finder at the start of a stream of {@code rateHz}. */
    public StillnessFinder(double rateHz) {
        this.perBlock = Math.max(2, (int) Math.round(BLOCK_S * rateHz));
    }

    /** All still stretches of at least {@link #SHORTEST_S}, in order. */
    public static List<Stance> find(SensorStream stream) {
        StillnessFinder finder = new StillnessFinder(stream.rateHz());
        finder.add(stream);
        return finder.stances(stream);
    }

    /** Looks at the samples that were not looked at yet; the stream begins with those that were. */
    public void add(SensorStream stream) {
        int first = blocks;
        blocks = stream.size() / perBlock;
        if (6 * blocks > mean.length) {
            mean = Arrays.copyOf(mean, Math.max(6 * blocks, 3 * mean.length / 2));
            calm = Arrays.copyOf(calm, mean.length / 6);
        }
        measureBlocks(stream, first);
        if (calmBlocks > BIAS_ANEW * calmBlocksAtBias) {
            boolean known = calmBlocksAtBias > 0;
            double[] before = bias.clone();
            findBias();
            double moved = Vector3.length(bias[0] - before[0], bias[1] - before[1], bias[2] - before[2]);
            if (known && moved < SAME_BIAS) {
                System.arraycopy(before, 0, bias, 0, 3);
            } else {
                found.clear();
                Arrays.fill(sum, 0);
                n = 0;
                joined = 0;
            }
        }
        for (; joined < blocks; joined++) {
            join(stream, joined);
        }
    }

    /** The still stretches so far; the last one may go on. */
    public List<Stance> stances(SensorStream stream) {
        List<Stance> all = new ArrayList<>(found);
        close(stream, all);
        return List.copyOf(all);
    }

    private void measureBlocks(SensorStream stream, int first) {
        float[] values = new float[perBlock];
        for (int b = first; b < blocks; b++) {
            measureBlock(stream, b, values);
            calmBlocks += calm[b] ? 1 : 0;
        }
    }

    private void measureBlock(SensorStream stream, int b, float[] values) {
        int from = b * perBlock;
        double force = 0;
        double rate = 0;
        for (int c = 0; c < 6; c++) {
            stream.readAxis(c, from, values);
            double m = sum(values) / perBlock;
            mean[6 * b + c] = (float) m;
            double variance = Math.max(0, sumOfSquares(values) / perBlock - m * m);
            if (c < 3) {
                force += variance;
            } else {
                rate += variance;
            }
        }
        double size = Vector3.length(mean[6 * b], mean[6 * b + 1], mean[6 * b + 2]);
        calm[b] = force < square(FORCE_SHAKE_MS2)
                && rate < square(RATE_SHAKE)
                && Math.abs(size - Gravity.STANDARD) < GRAVITY_ROOM
                && stream.time(from + perBlock - 1) - stream.time(from) < WITH_PAUSE * BLOCK_S;
    }

    private static double sum(float[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private static double sumOfSquares(float[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }

    private void findBias() {
        calmBlocksAtBias = calmBlocks;
        double[] values = new double[calmBlocks];
        for (int c = 0; c < 3; c++) {
            int count = 0;
            for (int b = 0; b < blocks; b++) {
                if (calm[b]) {
                    values[count++] = mean[6 * b + 3 + c];
                }
            }
            Arrays.sort(values);
            bias[c] = values[count / 2];
        }
    }

    private boolean still(int b) {
        double off = 0;
        for (int c = 0; c < 3; c++) {
            off += square(mean[6 * b + 3 + c] - bias[c]);
        }
        return calm[b] && off < square(RATE_OFF_BIAS);
    }

    private void join(SensorStream stream, int b) {
        boolean still = still(b);
        if (n > 0 && !(still && nearMean(b) && follows(stream, b))) {
            close(stream, found);
            Arrays.fill(sum, 0);
            n = 0;
        }
        if (still) {
            start = n == 0 ? b : start;
            n++;
            for (int c = 0; c < 6; c++) {
                sum[c] += mean[6 * b + c];
            }
        }
    }

    private boolean nearMean(int b) {
        double off = 0;
        for (int c = 0; c < 3; c++) {
            off += square(mean[6 * b + c] - sum[c] / n);
        }
        return off < square(FORCE_WANDER_MS2);
    }

    private boolean follows(SensorStream stream, int b) {
        int i = b * perBlock;
        return stream.time(i) - stream.time(i - 1) < BLOCK_S;
    }

    private void close(SensorStream stream, List<Stance> into) {
        int from = start * perBlock;
        int to = from + n * perBlock;
        if (n > 0 && stream.time(to - 1) - stream.time(from) >= SHORTEST_S) {
            into.add(new Stance(
                    from,
                    to,
                    stream.time(from),
                    stream.time(to - 1),
                    new Vector3(sum[0] / n, sum[1] / n, sum[2] / n),
                    new Vector3(sum[3] / n, sum[4] / n, sum[5] / n)));
        }
    }
}
