package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;
import java.util.Arrays;

/** Tells {@link GyroSense} from a stream that may grow, stretch by stretch. */
public final class GyroSenseFinder {

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
    /** Looked at at most, spread evenly over a recording; in one that grows further and further apart. */
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

    private final int third;
    /** The least way from one stretch to the next. */
    private final int pace;

    private final double[] whole = squares();
    private final double[] alone = squares();
    private final double[] angles = new double[ALL + 1];
    private int seenWhole;
    private int seenAlone;
    private int next;

    /** A finder at the start of a stream of {@code rateHz} that grows. */
    public GyroSenseFinder(double rateHz) {
        this(rateHz, 0);
    }

    /** A finder at the start of a stream of so many samples, over which it spreads its stretches. */
    GyroSenseFinder(double rateHz, int samples) {
        this.third = Math.max(2, (int) Math.round(STRETCH_S / 3 * rateHz));
        this.pace = third * Math.max(1, samples / third / MOST_STRETCHES);
    }

    /**
     * Looks at the stretches that are whole and were not looked at yet; the stream begins with those that were.
     *
     * @param bias the gyroscope's bias, rad/s
     */
    public void add(SensorStream stream, Vector3 bias) {
        for (;
                next + 3 * third <= stream.size() && seenAlone < ENOUGH;
                next += Math.max(pace, third * (next / third / MOST_STRETCHES))) {
            if (stream.time(next + 3 * third - 1) - stream.time(next) <= GAP_SHARE * STRETCH_S) {
                addStretch(stream, bias);
            }
        }
    }

    private void addStretch(SensorStream stream, Vector3 bias) {
        double least = MOST;
        double most = 0;
        for (int signs = 0; signs <= ALL; signs++) {
            angles[signs] = Math.min(MOST, wandering(stream, bias, next, third, signs));
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

    /** What the stretches so far tell. */
    public GyroSense sense() {
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
        return whole ? new GyroSense(true, true, true) : GyroSense.RIGHT;
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
