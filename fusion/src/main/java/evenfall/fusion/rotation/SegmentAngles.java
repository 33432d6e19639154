package evenfall.fusion.rotation;

/**
 * The three angles of a body segment by rotation, obliquity, tilt: R(world from segment) = Rz(yaw) Rx(lean) Ry(flexion)
 * (Baker 2001, Gait and Posture 13:1, doi 10.1016/S0966-6362(00)00083-7), segment x forward, y left, z up.
 *
 * <p>Singular only where {@code lean} is a quarter turn (lying on the side); there yaw is given as 0 and flexion holds
 * all of the remaining turn.
 *
 * @param yaw rad, -π to π, positive to the left (counter-clockwise from above)
 * @param lean rad, -π/2 to π/2, positive to the right (right side lower); the pelvis's obliquity
 * @param flexion rad, -π to π, positive forward; the pelvis's tilt
 */
public record SegmentAngles(double yaw, double lean, double flexion) {

    /** How near to a quarter turn of lean, as cosine, yaw and flexion can no longer be told apart. */
    private static final double SINGULAR_COSINE = 1e-9;

    /** The angles of an orientation, world from segment, of unit length. */
    public static SegmentAngles of(Quaternion q) {
        double r12 = 2 * (q.x() * q.y() - q.w() * q.z());
        double r22 = 1 - 2 * (q.x() * q.x() + q.z() * q.z());
        double r31 = 2 * (q.x() * q.z() - q.w() * q.y());
        double r32 = 2 * (q.y() * q.z() + q.w() * q.x());
        double r33 = 1 - 2 * (q.x() * q.x() + q.y() * q.y());
        double cosine = Math.hypot(r31, r33);
        double lean = Math.atan2(r32, cosine);
        if (cosine < SINGULAR_COSINE) {
            double r11 = 1 - 2 * (q.y() * q.y() + q.z() * q.z());
            double r13 = 2 * (q.x() * q.z() + q.w() * q.y());
            return new SegmentAngles(0, lean, Math.atan2(r13, r11));
        }
        return new SegmentAngles(Math.atan2(-r12, r22), lean, Math.atan2(-r31, r33));
    }

    /**
     * The tilt that a specific force at rest tells: yaw 0.
     *
     * @param force in segment axes, any unit, not of length 0
     */
    public static SegmentAngles ofGravity(Vector3 force) {
        return new SegmentAngles(
                0, Math.atan2(force.y(), Math.hypot(force.x(), force.z())), Math.atan2(-force.x(), force.z()));
    }

    /** From angles in degrees, in the order yaw, lean, flexion. */
    public static SegmentAngles ofDegrees(double yawDegrees, double leanDegrees, double flexionDegrees) {
        return new SegmentAngles(
                Math.toRadians(yawDegrees), Math.toRadians(leanDegrees), Math.toRadians(flexionDegrees));
    }

    /** The orientation, world from segment. */
    public Quaternion toQuaternion() {
        return Quaternion.about(Vector3.UP, yaw)
                .times(Quaternion.about(Vector3.X, lean))
                .times(Quaternion.about(Vector3.Y, flexion))
                .canonical();
    }

    /** {@link #yaw}, deg. */
    public double yawDegrees() {
        return Math.toDegrees(yaw);
    }

    /** {@link #lean}, deg. */
    public double leanDegrees() {
        return Math.toDegrees(lean);
    }

    /** {@link #flexion}, deg. */
    public double flexionDegrees() {
        return Math.toDegrees(flexion);
    }

    /** Angle between the segment's z-axis and the vertical, rad, 0 to π. */
    public double inclination() {
        return Math.acos(Math.max(-1, Math.min(1, Math.cos(lean) * Math.cos(flexion))));
    }
}
