package evenfall.fusion.rotation;

/**
 * A rotation as a unit quaternion: Hamilton product, scalar first. {@code q} and {@code -q} are the same rotation.
 *
 * <p>Records are for mathematics inside a step and for results; kept tracks lie in arrays. The methods that rotate or
 * read an angle presume unit length; {@link #times}, {@link #conjugate} and {@link #normalised} do not.
 *
 * @param w scalar part
 * @param x along the first axis
 * @param y along the second axis
 * @param z along the third axis
 */
public record Quaternion(double w, double x, double y, double z) {

    public static final Quaternion IDENTITY = new Quaternion(1, 0, 0, 0);

    /** Below this sine two rotations are interpolated on a straight line, whose error is of its third power. */
    private static final double STRAIGHT_SINE = 1e-6;

    /** The rotation by {@code angle} (rad, right-hand rule) about {@code axis} (any length but 0). */
    public static Quaternion about(Vector3 axis, double angle) {
        Vector3 n = axis.normalised();
        double s = Math.sin(angle / 2);
        return new Quaternion(Math.cos(angle / 2), s * n.x(), s * n.y(), s * n.z());
    }

    /**
     * The turn of a body whose rate about its own axes is {@code rate} (rad/s) for {@code seconds}; it multiplies on
     * the right: {@code orientation.times(fromBodyRate(...))}.
     */
    public static Quaternion fromBodyRate(Vector3 rate, double seconds) {
        double angle = rate.norm() * seconds;
        double s = seconds * halfSineOverAngle(angle);
        return new Quaternion(Math.cos(angle / 2), s * rate.x(), s * rate.y(), s * rate.z());
    }

    /** The shortest turn that takes the direction of {@code from} to that of {@code to}; opposite ones about any axis. */
    public static Quaternion between(Vector3 from, Vector3 to) {
        Vector3 a = from.normalised();
        Vector3 b = to.normalised();
        Vector3 half = a.plus(b);
        if (half.norm() < 1e-9) {
            Vector3 n = a.anyPerpendicular();
            return new Quaternion(0, n.x(), n.y(), n.z());
        }
        Vector3 h = half.normalised();
        Vector3 v = a.cross(h);
        return new Quaternion(a.dot(h), v.x(), v.y(), v.z());
    }

    /**
     * The rotation of a proper rotation matrix given by rows.
     *
     * <p>Uses the largest of the four squared parts, so that no case divides by a small number (Shepperd 1978, Journal
     * of Guidance and Control 1:223).
     *
     * @param m three rows of three numbers, orthonormal and right-handed
     */
    public static Quaternion fromMatrix(double[][] m) {
        double trace = m[0][0] + m[1][1] + m[2][2];
        Quaternion q;
        if (trace >= m[0][0] && trace >= m[1][1] && trace >= m[2][2]) {
            q = new Quaternion(1 + trace, m[2][1] - m[1][2], m[0][2] - m[2][0], m[1][0] - m[0][1]);
        } else if (m[0][0] >= m[1][1] && m[0][0] >= m[2][2]) {
            q = new Quaternion(
                    m[2][1] - m[1][2], 1 + m[0][0] - m[1][1] - m[2][2], m[0][1] + m[1][0], m[0][2] + m[2][0]);
        } else if (m[1][1] >= m[2][2]) {
            q = new Quaternion(
                    m[0][2] - m[2][0], m[0][1] + m[1][0], 1 - m[0][0] + m[1][1] - m[2][2], m[1][2] + m[2][1]);
        } else {
            q = new Quaternion(
                    m[1][0] - m[0][1], m[0][2] + m[2][0], m[1][2] + m[2][1], 1 - m[0][0] - m[1][1] + m[2][2]);
        }
        return q.normalised().canonical();
    }

    /** Product: the turn {@code right} first, then this one. */
    public Quaternion times(Quaternion right) {
        return new Quaternion(
                w * right.w - x * right.x - y * right.y - z * right.z,
                w * right.x + x * right.w + y * right.z - z * right.y,
                w * right.y - x * right.z + y * right.w + z * right.x,
                w * right.z + x * right.y - y * right.x + z * right.w);
    }

    /** The turn back. */
    public Quaternion conjugate() {
        return new Quaternion(w, -x, -y, -z);
    }

    /** Euclidean length of the four parts; 1 for a rotation. */
    public double norm() {
        return Math.sqrt(w * w + x * x + y * y + z * z);
    }

    /** Unit length. All parts 0 or one not finite is a caller's mistake. */
    public Quaternion normalised() {
        double norm = norm();
        if (norm > 0 && Double.isFinite(norm)) {
            return new Quaternion(w / norm, x / norm, y / norm, z / norm);
        }
        throw new IllegalArgumentException("no rotation in " + this);
    }

    /** The same rotation with a scalar part not below 0. */
    public Quaternion canonical() {
        return w < 0 ? negated() : this;
    }

    /** {@code v} turned by this rotation. */
    public Vector3 rotate(Vector3 v) {
        double tx = 2 * (y * v.z() - z * v.y());
        double ty = 2 * (z * v.x() - x * v.z());
        double tz = 2 * (x * v.y() - y * v.x());
        return new Vector3(
                v.x() + w * tx + y * tz - z * ty, v.y() + w * ty + z * tx - x * tz, v.z() + w * tz + x * ty - y * tx);
    }

    /** {@code v} turned by the inverse of this rotation. */
    public Vector3 rotateBack(Vector3 v) {
        return conjugate().rotate(v);
    }

    /** Rows of the rotation matrix: columns are the turned axes. */
    public double[][] toMatrix() {
        return new double[][] {
            {1 - 2 * (y * y + z * z), 2 * (x * y - w * z), 2 * (x * z + w * y)},
            {2 * (x * y + w * z), 1 - 2 * (x * x + z * z), 2 * (y * z - w * x)},
            {2 * (x * z - w * y), 2 * (y * z + w * x), 1 - 2 * (x * x + y * y)}
        };
    }

    /** Size of the turn, rad, 0 to π. */
    public double angle() {
        return 2 * Math.atan2(vectorNorm(), Math.abs(w));
    }

    /** Size of the turn from this to {@code o}, rad, 0 to π. */
    public double angleTo(Quaternion o) {
        return conjugate().times(o).angle();
    }

    /** The turn as a vector along its axis whose length is the angle, rad, at most π. */
    public Vector3 rotationVector() {
        Quaternion q = canonical();
        double sine = q.vectorNorm();
        double scale = sine < 1e-12 ? 2 : 2 * Math.atan2(sine, q.w) / sine;
        return new Vector3(scale * q.x, scale * q.y, scale * q.z);
    }

    /**
     * The rotation a part of the shorter way to {@code to} at even speed (Shoemake 1985, SIGGRAPH).
     *
     * @param part 0 gives this rotation, 1 the other
     */
    public Quaternion slerp(Quaternion to, double part) {
        double dot = w * to.w + x * to.x + y * to.y + z * to.z;
        Quaternion end = dot < 0 ? to.negated() : to;
        double sine = conjugate().times(end).vectorNorm();
        double omega = Math.atan2(sine, Math.abs(dot));
        double a = 1 - part;
        double b = part;
        if (sine > STRAIGHT_SINE) {
            a = Math.sin((1 - part) * omega) / sine;
            b = Math.sin(part * omega) / sine;
        }
        return new Quaternion(a * w + b * end.w, a * x + b * end.x, a * y + b * end.y, a * z + b * end.z).normalised();
    }

    /**
     * The part of this rotation that turns about {@code axis}: this = swing × twist, the twist first.
     *
     * <p>Where the swing is half a turn the twist is undefined and given as none.
     */
    public Quaternion twist(Vector3 axis) {
        Vector3 n = axis.normalised();
        double along = x * n.x() + y * n.y() + z * n.z();
        Quaternion t = new Quaternion(w, along * n.x(), along * n.y(), along * n.z());
        return t.norm() < 1e-12 ? IDENTITY : t.normalised();
    }

    /** What remains of this rotation without its {@link #twist} about {@code axis}: a turn at right angles to it. */
    public Quaternion swing(Vector3 axis) {
        return times(twist(axis).conjugate());
    }

    /** Angle of the {@link #twist} about {@code axis}, rad, above -π to π. */
    public double twistAngle(Vector3 axis) {
        Vector3 n = axis.normalised();
        Quaternion q = canonical();
        return 2 * Math.atan2(q.x * n.x() + q.y * n.y() + q.z * n.z(), q.w);
    }

    private Quaternion negated() {
        return new Quaternion(-w, -x, -y, -z);
    }

    private double vectorNorm() {
        return Vector3.length(x, y, z);
    }

    /** sin(angle / 2) / angle, by its series where the angle is tiny; for loops that keep their quaternions in arrays. */
    public static double halfSineOverAngle(double angle) {
        return Math.abs(angle) < 1e-4 ? 0.5 - angle * angle / 48 : Math.sin(angle / 2) / angle;
    }
}
