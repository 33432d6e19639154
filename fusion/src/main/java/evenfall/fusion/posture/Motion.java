package evenfall.fusion.posture;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import java.util.Arrays;
import java.util.BitSet;

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
    /** When the samples were taken, s, and the six columns as they were read. */
    private final double[] clock;

    private final float[][] raw;
    private final double[] wxyz;
    private final double[] force;
    private final double[] speed;
    private final double[] place;

    private Motion(MotionWindow window) {
        this.stream = window.stream();
        this.from = window.from();
        int n = window.size();
        this.clock = new double[n];
        this.raw = new float[6][n];
        stream.readTimes(from, clock);
        EvenStamps.even(clock, 1 / stream.rateHz());
        for (int axis = 0; axis < 6; axis++) {
            stream.readAxis(axis, from, raw[axis]);
        }
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

    /** When a sample was taken, s on the sensor's clock. */
    public double time(int i) {
        return clock[i];
    }

    /** Index of the last sample at or before a moment, but within the window. */
    public int indexAt(double timeS) {
        int found = Arrays.binarySearch(clock, timeS);
        int i = found < 0 ? -found - 2 : found;
        while (i + 1 < clock.length && clock[i + 1] == timeS) {
            i++;
        }
        return Math.max(0, i);
    }

    /**
     * Index of the last sample stamped at or before a moment of the stream's clock, but within the window: samples were taken beside
     * their stamps.
     */
    public int indexOfStamp(double stampS) {
        return Math.max(0, Math.min(size() - 1, stream.indexAtOrBefore(stampS) - from));
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

    /** When the vertical force passes a level (m/s²) on the straight line to a sample from the one before, s. */
    public double passes(int i, double level) {
        double before = verticalForce(i - 1);
        double part = (level - before) / (verticalForce(i) - before);
        return time(i - 1) + part * (time(i) - time(i - 1));
    }

    /** How far the samples before and after a moment lie apart, s. */
    public double stepAt(double timeS) {
        int i = Math.min(indexAt(timeS), size() - 2);
        return i < 0 ? 0 : time(i + 1) - time(i);
    }

    /** Specific force, world axes, m/s². */
    public Vector3 force(int i) {
        return vector(force, i);
    }

    /** One part (w, x, y, z) of world from sensor; like those below, for loops over many samples. */
    double turn(int i, int part) {
        return wxyz[4 * i + part];
    }

    /** Specific force along one world axis, m/s². */
    double force(int i, int axis) {
        return force[3 * i + axis];
    }

    /** Specific force along one axis of the sensor as it was read, m/s². */
    public double rawForce(int i, int axis) {
        return raw[axis][i];
    }

    /** Turn rate about one axis of the sensor as it was read, rad/s. */
    double rawRate(int i, int axis) {
        return raw[3 + axis][i];
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
        put(0, turn(e.startTilt()).times(window.start()));
        put(speed, 0, e.startSpeed());
        turnForce(0, e);
        BitSet jolted = window.joltedSamples();
        Vector3 bias = window.gyroBias().plus(e.rateBias());
        double[] rate = new double[3];
        readRate(0, window.gyroBias(), bias, e, rate);
        for (int i = 1; i < size(); i++) {
            step(i, window, e, bias, jolted, rate);
        }
    }

    /** Goes on by one sample; a method of its own, so that it is compiled for itself and not with each loop around it. */
    private void step(int i, MotionWindow window, MotionErrors e, Vector3 bias, BitSet jolted, double[] rate) {
        double dt = time(i) - time(i - 1);
        double x = rate[0];
        double y = rate[1];
        double z = rate[2];
        readRate(i, window.gyroBias(), bias, e, rate);
        turnBy(i, (x + rate[0]) * 0.5, (y + rate[1]) * 0.5, (z + rate[2]) * 0.5, dt);
        Vector3 jump = jolted.get(i) ? jolt(i, window, e) : Vector3.ZERO;
        turnForce(i, e);
        move(i, 0, 0, jump.x(), dt);
        move(i, 1, 0, jump.y(), dt);
        move(i, 2, Gravity.STANDARD, jump.z(), dt);
    }

    /** The scale error acts on the turn rate without its bias, as in the smoother's columns. */
    private void readRate(int i, Vector3 still, Vector3 bias, MotionErrors e, double[] into) {
        double x = rawRate(i, 0);
        double y = rawRate(i, 1);
        double z = rawRate(i, 2);
        into[0] = x - bias.x() - e.rateScale().x() * (x - still.x());
        into[1] = y - bias.y() - e.rateScale().y() * (y - still.y());
        into[2] = z - bias.z() - e.rateScale().z() * (z - still.z());
    }

    /** Turns on from the sample before by a body rate. */
    private void turnBy(int i, double gx, double gy, double gz, double dt) {
        double angle = Vector3.length(gx, gy, gz) * dt;
        double s = dt * Quaternion.halfSineOverAngle(angle);
        double rw = Math.cos(angle / 2);
        double rx = s * gx;
        double ry = s * gy;
        double rz = s * gz;
        double w = wxyz[4 * i - 4];
        double x = wxyz[4 * i - 3];
        double y = wxyz[4 * i - 2];
        double z = wxyz[4 * i - 1];
        double nw = w * rw - x * rx - y * ry - z * rz;
        double nx = w * rx + x * rw + y * rz - z * ry;
        double ny = w * ry - x * rz + y * rw + z * rx;
        double nz = w * rz + x * ry - y * rx + z * rw;
        double norm = Math.sqrt(nw * nw + nx * nx + ny * ny + nz * nz);
        wxyz[4 * i] = nw / norm;
        wxyz[4 * i + 1] = nx / norm;
        wxyz[4 * i + 2] = ny / norm;
        wxyz[4 * i + 3] = nz / norm;
    }

    /** Lays the jolts at a sample onto its orientation and returns the jump of the speed, m/s. */
    private Vector3 jolt(int i, MotionWindow window, MotionErrors e) {
        Vector3 jump = Vector3.ZERO;
        for (int k = 0; k < window.jolts().size(); k++) {
            if (window.jolts().get(k).index() == from + i) {
                jump = jump.plus(e.jumps().get(k));
                put(i, turn(e.turns().get(k)).times(orientation(i)));
            }
        }
        return jump;
    }

    /** The corrected force of a sample, turned into the world. */
    private void turnForce(int i, MotionErrors e) {
        double fx = rawForce(i, 0);
        double fy = rawForce(i, 1);
        double fz = rawForce(i, 2);
        fx = fx - e.forceBias().x() - e.forceScale().x() * fx;
        fy = fy - e.forceBias().y() - e.forceScale().y() * fy;
        fz = fz - e.forceBias().z() - e.forceScale().z() * fz;
        double w = wxyz[4 * i];
        double x = wxyz[4 * i + 1];
        double y = wxyz[4 * i + 2];
        double z = wxyz[4 * i + 3];
        double tx = 2 * (y * fz - z * fy);
        double ty = 2 * (z * fx - x * fz);
        double tz = 2 * (x * fy - y * fx);
        force[3 * i] = fx + w * tx + y * tz - z * ty;
        force[3 * i + 1] = fy + w * ty + z * tx - x * tz;
        force[3 * i + 2] = fz + w * tz + x * ty - y * tx;
    }

    /** Speed and place along one world axis from those of the sample before. */
    private void move(int i, int axis, double weight, double jump, double dt) {
        int now = 3 * i + axis;
        double mean = (force[now - 3] + force[now]) * 0.5;
        speed[now] = speed[now - 3] + (mean - weight) * dt + jump;
        place[now] = place[now - 3] + (speed[now - 3] + speed[now]) * (dt / 2);
    }

    private static Quaternion turn(Vector3 angles) {
        return Quaternion.fromBodyRate(angles, 1);
    }

    private void put(int i, Quaternion q) {
        wxyz[4 * i] = q.w();
        wxyz[4 * i + 1] = q.x();
        wxyz[4 * i + 2] = q.y();
        wxyz[4 * i + 3] = q.z();
    }

    private static void put(double[] columns, int i, Vector3 value) {
        columns[3 * i] = value.x();
        columns[3 * i + 1] = value.y();
        columns[3 * i + 2] = value.z();
    }
}
