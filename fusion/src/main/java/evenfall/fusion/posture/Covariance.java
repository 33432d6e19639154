package evenfall.fusion.posture;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;

/**
 * A covariance of three axes: how far a vector may be off, and along which directions more than along others.
 */
public record Covariance(double xx, double yy, double zz, double xy, double xz, double yz) {

    /** Of what is known. */
    public static final Covariance NONE = even(0);

    /** Of three neighbouring unknowns of a symmetric matrix. */
    static Covariance of(double[][] m, int first) {
        int second = first + 1;
        int third = first + 2;
        return new Covariance(
                m[first][first],
                m[second][second],
                m[third][third],
                m[first][second],
                m[first][third],
                m[second][third]);
    }

    /** The same along every direction. */
    public static Covariance even(double sigma) {
        double square = sigma * sigma;
        return new Covariance(square, square, square, 0, 0, 0);
    }

    /** Also off by {@code off} times a standard normal number, independent of the rest. */
    public Covariance plus(Vector3 off) {
        return new Covariance(
                xx + off.x() * off.x(),
                yy + off.y() * off.y(),
                zz + off.z() * off.z(),
                xy + off.x() * off.y(),
                xz + off.x() * off.z(),
                yz + off.y() * off.z());
    }

    /** Also off by what another covariance says, independent of it. */
    public Covariance plus(Covariance other) {
        return new Covariance(xx + other.xx, yy + other.yy, zz + other.zz, xy + other.xy, xz + other.xz, yz + other.yz);
    }

    /** Of the vector as {@code turn} turns it. */
    public Covariance turnedBy(Quaternion turn) {
        Vector3 x = turn.rotateBack(Vector3.X);
        Vector3 y = turn.rotateBack(Vector3.Y);
        Vector3 z = turn.rotateBack(Vector3.UP);
        return new Covariance(between(x, x), between(y, y), between(z, z), between(x, y), between(x, z), between(y, z));
    }

    /** One standard deviation of what is off along a direction: of the dot product with it. */
    public double along(Vector3 direction) {
        // Roundoff may leave a little less than nothing.
        return Math.sqrt(Math.max(0, between(direction, direction)));
    }

    /** One standard deviation in whichever direction: root sum of squares of the axes'. */
    public double size() {
        return Math.sqrt(xx + yy + zz);
    }

    private double between(Vector3 a, Vector3 b) {
        return a.x() * (xx * b.x() + xy * b.y() + xz * b.z())
                + a.y() * (xy * b.x() + yy * b.y() + yz * b.z())
                + a.z() * (xz * b.x() + yz * b.y() + zz * b.z());
    }

    double[][] matrix() {
        return new double[][] {{xx, xy, xz}, {xy, yy, yz}, {xz, yz, zz}};
    }
}
