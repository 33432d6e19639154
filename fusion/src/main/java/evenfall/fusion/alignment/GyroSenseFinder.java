package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;
import java.util.Arrays;

/** Tells {@link GyroSense} from a stream that may grow, stretch by stretch. */
public final class GyroSenseFinder {

    /** Accelerations average out over a third of it, and bodies turn enough from its first to its last: common practice, no source. */
    private static final double STRETCH_S = 1.2;
    /** Stretches whose samples take longer than this share of their due time hold a gap. */
    private static final double GAP_SHARE = 1.1;
    /** Answers nearer to one another than this tell nothing, rad. */
    private static final double LEAST_DIFFERENCE = Math.toRadians(3);

    /** Fewer stretches that tell something may do so by chance. */
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
    private final Wandering[] ways = new Wandering[ALL + 1];
    /** A stretch: its times, s, and its six columns. */
    private final double[] times;

    private final float[][] values;
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
        this.times = new double[3 * third];
        this.values = new float[6][3 * third];
        Arrays.setAll(ways, Wandering::new);
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
        for (Wandering way : ways) {
            way.begin();
        }
        stream.readTimes(next, times);
        for (int axis = 0; axis < 6; axis++) {
            stream.readAxis(axis, next, values[axis]);
            if (isStuck(values[axis])) {
                return;
            }
        }
        for (int k = 0; k < 3 * third; k++) {
            addSample(k, bias);
        }
        double least = MOST;
        double most = 0;
        for (int signs = 0; signs <= ALL; signs++) {
            angles[signs] = Math.min(MOST, ways[signs].angle());
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

    /** Where an axis stands still, another seems to turn the wrong way. */
    private static boolean isStuck(float[] values) {
        for (float value : values) {
            if (value != values[0]) {
                return false;
            }
        }
        return true;
    }

    private void addSample(int k, Vector3 bias) {
        double gx = values[3][k] - bias.x();
        double gy = values[4][k] - bias.y();
        double gz = values[5][k] - bias.z();
        // What the signs do not change is worked out once for all of them.
        double seconds = k == 0 ? 0 : times[k] - times[k - 1];
        double angle = Vector3.length(gx, gy, gz) * seconds;
        double cosine = Math.cos(angle / 2);
        double s = seconds * Quaternion.halfSineOverAngle(angle);
        int part = k < third ? 0 : k < 2 * third ? -1 : 1;
        for (Wandering way : ways) {
            way.turn(cosine, s * gx, s * gy, s * gz);
            if (part >= 0) {
                way.add(part, values[0][k], values[1][k], values[2][k]);
            }
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

    /** How far the mean force wanders from the first to the last third, seen in the axes of the first sample. */
    private static final class Wandering {

        private final int signX;
        private final int signY;
        private final int signZ;
        private final double[] sums = new double[6];
        private double w;
        private double x;
        private double y;
        private double z;

        Wandering(int signs) {
            signX = (signs & 1) != 0 ? -1 : 1;
            signY = (signs & 2) != 0 ? -1 : 1;
            signZ = (signs & 4) != 0 ? -1 : 1;
        }

        void begin() {
            w = 1;
            x = 0;
            y = 0;
            z = 0;
            Arrays.fill(sums, 0);
        }

        /** Turns on by a unit quaternion as the gyroscope tells it. */
        void turn(double c, double a, double b, double d) {
            double sx = signX * a;
            double sy = signY * b;
            double sz = signZ * d;
            double nextW = w * c - x * sx - y * sy - z * sz;
            double nextX = w * sx + x * c + y * sz - z * sy;
            double nextY = w * sy - x * sz + y * c + z * sx;
            z = w * sz + x * sy - y * sx + z * c;
            w = nextW;
            x = nextX;
            y = nextY;
        }

        /** Adds a force to the first (0) or last (1) third's. */
        void add(int which, double ax, double ay, double az) {
            double tx = 2 * (y * az - z * ay);
            double ty = 2 * (z * ax - x * az);
            double tz = 2 * (x * ay - y * ax);
            sums[3 * which] += ax + w * tx + y * tz - z * ty;
            sums[3 * which + 1] += ay + w * ty + z * tx - x * tz;
            sums[3 * which + 2] += az + w * tz + x * ty - y * tx;
        }

        /** Angle between the two, rad; 0 where one of them is nothing. */
        double angle() {
            Vector3 first = new Vector3(sums[0], sums[1], sums[2]);
            Vector3 last = new Vector3(sums[3], sums[4], sums[5]);
            return first.norm() > 0 && last.norm() > 0 ? first.angleTo(last) : 0;
        }
    }
}
