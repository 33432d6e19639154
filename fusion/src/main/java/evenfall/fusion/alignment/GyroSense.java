package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;
import java.util.Arrays;

/**
 * About which axes a gyroscope turns the other way than the accelerometer's axes say. Turned back by the right rates, the
 * specific force of a moving body keeps its mean direction, up, for accelerations average out within half a second; turned
 * back by mirrored rates it wanders off by twice what the body turned.
 *
 * <p>The mean of the first third of a stretch is laid beside the mean of its last third, once for each of the eight choices
 * of signs. A gyroscope is taken as mirrored as a whole when in at least three stretches the rates as they are and the
 * negated ones answer differently and the negated ones explain those stretches better by far. Some axes alone are taken as
 * mirrored where that explains more stretches better still. An axis about which gravity never moves leaves no trace: of
 * choices that explain equally well, all axes come before one, and one before two.
 *
 * @param x whether the turn rate about x is to be negated
 * @param y the same for y
 * @param z the same for z
 */
public record GyroSense(boolean x, boolean y, boolean z) {

    /** A gyroscope as it should be. */
    public static final GyroSense RIGHT = new GyroSense(false, false, false);

    private static final double STRETCH_S = 1.2;
    /** Stretches whose samples take longer than this share of their due time hold a gap. */
    private static final double GAP_SHARE = 1.1;
    /** Answers nearer to one another than this tell nothing, rad. */
    private static final double LEAST_DIFFERENCE = Math.toRadians(3);

    private static final int LEAST_STRETCHES = 3;
    /** Errors above this count as this, so that one wild stretch does not decide, rad. */
    private static final double MOST = Math.toRadians(30);
    /** Squared errors must differ by this factor: right gyroscopes of people reached 1.1, nine in ten mirrored ones pass it. */
    private static final double LEAST_RATIO = 2.5;
    /** Stretches enough to be sure. */
    private static final int ENOUGH = 600;
    /** Looked at at most, spread evenly over the recording. */
    private static final int MOST_STRETCHES = 3000;

    /** Some axes alone have six choices for chance to take, so they must show in more stretches. */
    private static final int LEAST_STRETCHES_ALONE = 12;

    /** Right gyroscopes reached 1.7 on a table pushed about and 1.4 on people. */
    private static final double LEAST_RATIO_ALONE = 2.2;
    /** Squared errors this near to the least explain as well. */
    private static final double AS_GOOD = 1.3;
    /** Bit k set negates axis k. */
    private static final int ALL = 0b111;

    private static final int[] ALONE = {0b001, 0b010, 0b100, 0b011, 0b101, 0b110};

    /** Whether any axis is to be negated. */
    public boolean mirrored() {
        return x || y || z;
    }

    /**
     * Finds which turn rates of the stream should be negated.
     *
     * @param bias the gyroscope's bias, rad/s
     */
    public static GyroSense find(SensorStream stream, Vector3 bias) {
        int third = Math.max(2, (int) Math.round(STRETCH_S / 3 * stream.rateHz()));
        double[] whole = squares();
        double[] alone = squares();
        double[] angles = new double[ALL + 1];
        int seenWhole = 0;
        int seenAlone = 0;
        int pace = third * Math.max(1, stream.size() / third / MOST_STRETCHES);
        for (int i = 0; i + 3 * third <= stream.size() && seenAlone < ENOUGH; i += pace) {
            if (stream.time(i + 3 * third - 1) - stream.time(i) > GAP_SHARE * STRETCH_S) {
                continue;
            }
            double least = MOST;
            double most = 0;
            for (int signs = 0; signs <= ALL; signs++) {
                angles[signs] = Math.min(MOST, wandering(stream, bias, i, third, signs));
                least = Math.min(least, angles[signs]);
                most = Math.max(most, angles[signs]);
            }
            if (Math.abs(angles[0] - angles[ALL]) > LEAST_DIFFERENCE) {
                add(whole, angles);
                seenWhole++;
            }
            if (most - least > LEAST_DIFFERENCE) {
                add(alone, angles);
                seenAlone++;
            }
        }
        boolean mirrored = seenWhole >= LEAST_STRETCHES && whole[0] > LEAST_RATIO * whole[ALL];
        return choose(alone, mirrored, seenAlone >= LEAST_STRETCHES_ALONE);
    }

    private static GyroSense choose(double[] squares, boolean whole, boolean enough) {
        double best = Arrays.stream(squares).min().orElse(0);
        if (whole && (!enough || squares[ALL] <= AS_GOOD * best)) {
            return new GyroSense(true, true, true);
        }
        if (enough && squares[0] > LEAST_RATIO_ALONE * best) {
            for (int signs : ALONE) {
                if (squares[signs] <= AS_GOOD * best) {
                    return new GyroSense((signs & 1) != 0, (signs & 2) != 0, (signs & 4) != 0);
                }
            }
        }
        return whole ? new GyroSense(true, true, true) : RIGHT;
    }

    private static double[] squares() {
        double[] squares = new double[ALL + 1];
        Arrays.fill(squares, LEAST_DIFFERENCE * LEAST_DIFFERENCE);
        return squares;
    }

    private static void add(double[] squares, double[] angles) {
        for (int signs = 0; signs <= ALL; signs++) {
            squares[signs] += angles[signs] * angles[signs];
        }
    }

    /** Angle between the mean forces of the first and the last third, both turned into the axes of the first sample, rad. */
    private static double wandering(SensorStream s, Vector3 bias, int from, int third, int signs) {
        double x = (signs & 1) != 0 ? -1 : 1;
        double y = (signs & 2) != 0 ? -1 : 1;
        double z = (signs & 4) != 0 ? -1 : 1;
        Quaternion q = Quaternion.IDENTITY;
        Vector3 first = Vector3.ZERO;
        Vector3 last = Vector3.ZERO;
        for (int k = 0; k < 3 * third; k++) {
            int i = from + k;
            if (k > 0) {
                Vector3 rate =
                        new Vector3(x * (s.gx(i) - bias.x()), y * (s.gy(i) - bias.y()), z * (s.gz(i) - bias.z()));
                q = q.times(Quaternion.fromBodyRate(rate, s.time(i) - s.time(i - 1)));
            }
            if (k < third) {
                first = first.plus(q.rotate(new Vector3(s.ax(i), s.ay(i), s.az(i))));
            } else if (k >= 2 * third) {
                last = last.plus(q.rotate(new Vector3(s.ax(i), s.ay(i), s.az(i))));
            }
        }
        return first.norm() > 0 && last.norm() > 0 ? first.angleTo(last) : 0;
    }
}
