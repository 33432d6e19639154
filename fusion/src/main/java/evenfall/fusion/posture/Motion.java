package evenfall.fusion.posture;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;

/**
 * How a sensor moves through a window: orientation, force, speed and place at every sample, by strapdown integration
 * with the trapezoid rule (Titterton and Weston, Strapdown Inertial Navigation Technology, 2nd ed. 2004, chapter 11).
 *
 * <p>World axes, z up, heading that of the window's start; place counts from the window's first sample. Indices count
 * from the window's first sample.
 */
public final class Motion {

    private final SensorStream stream;
    private final int from;
    private final double[] wxyz;
    private final double[] force;
    private final double[] speed;
    private final double[] place;

    private Motion(MotionWindow window) {
        this.stream = window.stream();
        this.from = window.from();
        int n = window.size();
        this.wxyz = new double[4 * n];
        this.force = new double[3 * n];
        this.speed = new double[3 * n];
        this.place = new double[3 * n];
    }

    /** The motion through a window, with errors taken out. */
    public static Motion of(MotionWindow window, MotionErrors errors) {
        Motion motion = new Motion(window);
        motion.integrate(window, errors);
        return motion;
    }

    /** The motion through a window whose sensor is taken to be free of errors. */
    public static Motion of(MotionWindow window) {
        return of(window, MotionErrors.none(window.jolts().size()));
    }

    /** Number of samples. */
    public int size() {
        return wxyz.length / 4;
    }

    /** Time of a sample, s on the sensor's clock. */
    public double time(int i) {
        return stream.time(from + i);
    }

    /** Index of the last sample at or before a moment, but within the window. */
    public int indexAt(double timeS) {
        return Math.max(0, Math.min(size() - 1, stream.indexAtOrBefore(timeS) - from));
    }

    /** Index in the stream of the window's first sample. */
    public int from() {
        return from;
    }

    /** The stream this is a window of. */
    public SensorStream stream() {
        return stream;
    }

    /** World from sensor. */
    public Quaternion orientation(int i) {
        return new Quaternion(wxyz[4 * i], wxyz[4 * i + 1], wxyz[4 * i + 2], wxyz[4 * i + 3]);
    }

    /** World from sensor at a moment between two samples. */
    public Quaternion orientationAt(double timeS) {
        int i = indexAt(timeS);
        double part = part(i, timeS);
        return part > 0 ? orientation(i).slerp(orientation(i + 1), part) : orientation(i);
    }

    /** Specific force along the world's z, m/s². */
    public double verticalForce(int i) {
        return force[3 * i + 2];
    }

    /** Specific force, world axes, m/s². */
    public Vector3 force(int i) {
        return vector(force, i);
    }

    /** Speed, world axes, m/s. */
    public Vector3 speed(int i) {
        return vector(speed, i);
    }

    /** Speed at a moment between two samples, m/s. */
    public Vector3 speedAt(double timeS) {
        int i = indexAt(timeS);
        double part = part(i, timeS);
        return part > 0 ? speed(i).times(1 - part).plus(speed(i + 1).times(part)) : speed(i);
    }

    /** Place, world axes, m. */
    public Vector3 place(int i) {
        return vector(place, i);
    }

    /** Place at a moment between two samples, m. */
    public Vector3 placeAt(double timeS) {
        int i = indexAt(timeS);
        double part = part(i, timeS);
        if (!(part > 0)) {
            return place(i);
        }
        double dt = part * (time(i + 1) - time(i));
        return place(i).plus(speed(i).plus(speedAt(timeS)).times(dt / 2));
    }

    private double part(int i, double timeS) {
        if (i + 1 >= size()) {
            return 0;
        }
        double dt = time(i + 1) - time(i);
        return dt > 0 ? Math.max(0, Math.min(1, (timeS - time(i)) / dt)) : 0;
    }

    private static Vector3 vector(double[] columns, int i) {
        return new Vector3(columns[3 * i], columns[3 * i + 1], columns[3 * i + 2]);
    }

    private void integrate(MotionWindow window, MotionErrors e) {
        Vector3 bias = window.gyroBias().plus(e.rateBias());
        Quaternion q = turn(e.startTilt()).times(window.start());
        Vector3 v = e.startSpeed();
        Vector3 p = Vector3.ZERO;
        Vector3 rate = rate(0, window.gyroBias(), bias, e);
        Vector3 f = q.rotate(e.correctForce(raw(0)));
        put(0, q, f, v, p);
        for (int i = 1; i < size(); i++) {
            double dt = time(i) - time(i - 1);
            Vector3 nextRate = rate(i, window.gyroBias(), bias, e);
            q = q.times(Quaternion.fromBodyRate(rate.plus(nextRate).times(0.5), dt))
                    .normalised();
            Vector3 jump = Vector3.ZERO;
            for (int k = 0; k < window.jolts().size(); k++) {
                if (window.jolts().get(k).index() == from + i) {
                    jump = jump.plus(e.jumps().get(k));
                    q = turn(e.turns().get(k)).times(q);
                }
            }
            Vector3 nextForce = q.rotate(e.correctForce(raw(i)));
            Vector3 mean = f.plus(nextForce).times(0.5);
            Vector3 nextSpeed = v.plus(new Vector3(mean.x(), mean.y(), mean.z() - Gravity.STANDARD).times(dt));
            nextSpeed = nextSpeed.plus(jump);
            p = p.plus(v.plus(nextSpeed).times(dt / 2));
            put(i, q, nextForce, nextSpeed, p);
            v = nextSpeed;
            f = nextForce;
            rate = nextRate;
        }
    }

    private static Quaternion turn(Vector3 angles) {
        return Quaternion.fromBodyRate(angles, 1);
    }

    private Vector3 raw(int i) {
        int k = from + i;
        return new Vector3(stream.ax(k), stream.ay(k), stream.az(k));
    }

    /** The scale error acts on the turn rate without its bias, as in the smoother's columns. */
    private Vector3 rate(int i, Vector3 still, Vector3 bias, MotionErrors e) {
        int k = from + i;
        return new Vector3(
                stream.gx(k) - bias.x() - e.rateScale().x() * (stream.gx(k) - still.x()),
                stream.gy(k) - bias.y() - e.rateScale().y() * (stream.gy(k) - still.y()),
                stream.gz(k) - bias.z() - e.rateScale().z() * (stream.gz(k) - still.z()));
    }

    private void put(int i, Quaternion q, Vector3 f, Vector3 v, Vector3 p) {
        wxyz[4 * i] = q.w();
        wxyz[4 * i + 1] = q.x();
        wxyz[4 * i + 2] = q.y();
        wxyz[4 * i + 3] = q.z();
        put(force, i, f);
        put(speed, i, v);
        put(place, i, p);
    }

    private static void put(double[] columns, int i, Vector3 value) {
        columns[3 * i] = value.x();
        columns[3 * i + 1] = value.y();
        columns[3 * i + 2] = value.z();
    }
}
