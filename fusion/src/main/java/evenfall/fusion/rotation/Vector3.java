package evenfall.fusion.rotation;

/**
 * A vector in three dimensions, for mathematics outside hot loops.
 *
 * @param x along the first axis
 * @param y along the second axis
 * @param z along the third axis
 */
public record Vector3(double x, double y, double z) {

    public static final Vector3 ZERO = new Vector3(0, 0, 0);

    /** The first axis: forward on the body. */
    public static final Vector3 X = new Vector3(1, 0, 0);

    /** The second axis: left on the body. */
    public static final Vector3 Y = new Vector3(0, 1, 0);

    /** The third axis: up in the world and on the body. */
    public static final Vector3 UP = new Vector3(0, 0, 1);

    public Vector3 plus(Vector3 other) {
        return new Vector3(x + other.x, y + other.y, z + other.z);
    }

    public Vector3 minus(Vector3 other) {
        return new Vector3(x - other.x, y - other.y, z - other.z);
    }

    public Vector3 times(double factor) {
        return new Vector3(factor * x, factor * y, factor * z);
    }

    public double dot(Vector3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /** The right-handed cross product {@code this x other}. */
    public Vector3 cross(Vector3 other) {
        return new Vector3(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double norm() {
        return length(x, y, z);
    }

    /** The length of a vector that is not one yet: for loops that keep theirs in numbers. */
    public static double length(double x, double y, double z) {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /**
     * The same direction with length 1.
     *
     * @throws IllegalArgumentException if the length is 0 or not finite
     */
    public Vector3 normalised() {
        double norm = norm();
        if (norm > 0 && Double.isFinite(norm)) {
            return times(1 / norm);
        }
        throw new IllegalArgumentException("no direction in " + this);
    }

    /** The part at right angles to the unit vector {@code axis}. */
    public Vector3 across(Vector3 axis) {
        return minus(axis.times(dot(axis)));
    }

    /** The angle between the two, rad, 0 to pi; 0 if either has length 0. */
    public double angleTo(Vector3 other) {
        return Math.atan2(cross(other).norm(), dot(other));
    }

    /** Some unit vector at a right angle to this one, whose length must not be 0. */
    public Vector3 anyPerpendicular() {
        double ax = Math.abs(x);
        double ay = Math.abs(y);
        double az = Math.abs(z);
        Vector3 least = ax <= ay && ax <= az ? X : ay <= az ? Y : UP;
        return cross(least).normalised();
    }
}
