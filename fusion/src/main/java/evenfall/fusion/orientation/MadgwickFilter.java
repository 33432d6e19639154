package evenfall.fusion.orientation;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;

/**
 * Gradient descent on the direction of gravity, six axes.
 *
 * <p>Source: Madgwick, Harrison and Vaidyanathan 2011, IEEE International Conference on Rehabilitation Robotics, doi
 * 10.1109/ICORR.2011.5975346, worked from the equations. A sample of no specific force at all only turns.
 */
public final class MadgwickFilter implements OrientationFilter {

    /** The author's gain for six axes, rad/s (1.9 deg/s); from memory. */
    public static final double DEFAULT_BETA = 0.033;

    private final double beta;
    private final Attitude q = new Attitude();
    private boolean started;

    /** A filter that starts from the tilt of its first sample, with gain {@code beta} in rad/s. */
    public MadgwickFilter(double beta) {
        this.beta = beta;
    }

    /** A filter that starts from a given orientation, with gain {@code beta} in rad/s. */
    public MadgwickFilter(double beta, Quaternion start) {
        this(beta);
        q.set(start);
        started = true;
    }

    @Override
    public void step(double seconds, double ax, double ay, double az, double gx, double gy, double gz) {
        double norm = Vector3.length(ax, ay, az);
        if (!started && norm > 0) {
            q.setFromForce(ax, ay, az);
            started = true;
        }
        double dw = 0.5 * (-q.x * gx - q.y * gy - q.z * gz);
        double dx = 0.5 * (q.w * gx + q.y * gz - q.z * gy);
        double dy = 0.5 * (q.w * gy - q.x * gz + q.z * gx);
        double dz = 0.5 * (q.w * gz + q.x * gy - q.y * gx);
        if (norm > 0) {
            double fx = 2 * (q.x * q.z - q.w * q.y) - ax / norm;
            double fy = 2 * (q.w * q.x + q.y * q.z) - ay / norm;
            double fz = 2 * (0.5 - q.x * q.x - q.y * q.y) - az / norm;
            double sw = -2 * q.y * fx + 2 * q.x * fy;
            double sx = 2 * q.z * fx + 2 * q.w * fy - 4 * q.x * fz;
            double sy = -2 * q.w * fx + 2 * q.z * fy - 4 * q.y * fz;
            double sz = 2 * q.x * fx + 2 * q.y * fy;
            double steepness = Math.sqrt(sw * sw + sx * sx + sy * sy + sz * sz);
            if (steepness > 0) {
                double gain = beta / steepness;
                dw -= gain * sw;
                dx -= gain * sx;
                dy -= gain * sy;
                dz -= gain * sz;
            }
        }
        double w = q.w + dw * seconds;
        double x = q.x + dx * seconds;
        double y = q.y + dy * seconds;
        double z = q.z + dz * seconds;
        double length = Math.sqrt(w * w + x * x + y * y + z * z);
        q.set(w / length, x / length, y / length, z / length);
    }

    @Override
    public double w() {
        return q.w;
    }

    @Override
    public double x() {
        return q.x;
    }

    @Override
    public double y() {
        return q.y;
    }

    @Override
    public double z() {
        return q.z;
    }
}
