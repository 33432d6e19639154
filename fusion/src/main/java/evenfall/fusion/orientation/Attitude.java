package evenfall.fusion.orientation;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;

/** The orientation a filter carries along, world from sensor, changed in place so that a step allocates nothing. */
final class Attitude {

    double w = 1;
    double x;
    double y;
    double z;

    void set(double newW, double newX, double newY, double newZ) {
        w = newW;
        x = newX;
        y = newY;
        z = newZ;
    }

    /** Multiplies by the turn of body rate (rad/s) times {@code seconds} on the right. */
    void turnByBodyRate(double gx, double gy, double gz, double seconds) {
        double rate = Vector3.length(gx, gy, gz);
        double half = rate * seconds / 2;
        // sin(half) / rate; where half is tiny its series to third order is exact to rounding
        double s = half < 1e-3 ? seconds / 2 * (1 - half * half / 6) : Math.sin(half) / rate;
        double c = half < 1e-3 ? 1 - half * half / 2 + half * half * half * half / 24 : Math.cos(half);
        double dx = s * gx;
        double dy = s * gy;
        double dz = s * gz;
        set(
                w * c - x * dx - y * dy - z * dz,
                w * dx + x * c + y * dz - z * dy,
                w * dy - x * dz + y * c + z * dx,
                w * dz + x * dy - y * dx + z * c);
        normalise();
    }

    void set(Quaternion q) {
        set(q.w(), q.x(), q.y(), q.z());
    }

    /** This becomes {@code left} times {@code right}. */
    void setProduct(Attitude left, Attitude right) {
        set(
                left.w * right.w - left.x * right.x - left.y * right.y - left.z * right.z,
                left.w * right.x + left.x * right.w + left.y * right.z - left.z * right.y,
                left.w * right.y - left.x * right.z + left.y * right.w + left.z * right.x,
                left.w * right.z + left.x * right.y - left.y * right.x + left.z * right.w);
    }

    /** Turns the world the shortest way so that the unit vector (ux, uy, uz) comes to point up. */
    void tiltUp(double ux, double uy, double uz) {
        double half = Math.sqrt(Math.max(0, (1 + uz) / 2));
        if (half > 1e-6) {
            tiltBy(half, uy / (2 * half), -ux / (2 * half));
        } else {
            tiltBy(0, 1, 0);
        }
    }

    /** Rows of the rotation matrix into the first nine places. */
    void toMatrix(double[] r) {
        r[0] = 1 - 2 * (y * y + z * z);
        r[1] = 2 * (x * y - w * z);
        r[2] = 2 * (x * z + w * y);
        r[3] = 2 * (x * y + w * z);
        r[4] = 1 - 2 * (x * x + z * z);
        r[5] = 2 * (y * z - w * x);
        r[6] = 2 * (x * z - w * y);
        r[7] = 2 * (y * z + w * x);
        r[8] = 1 - 2 * (x * x + y * y);
    }

    /** Multiplies by (pw, px, py, 0), a level turn, on the left. */
    void tiltBy(double pw, double px, double py) {
        set(pw * w - px * x - py * y, pw * x + px * w + py * z, pw * y + py * w - px * z, pw * z + px * y - py * x);
        normalise();
    }

    /** The tilt that makes a specific force at rest point up, by the shortest turn from no turn; none for length 0. */
    void setFromForce(double ax, double ay, double az) {
        double norm = Vector3.length(ax, ay, az);
        if (!(norm > 0)) {
            set(1, 0, 0, 0);
            return;
        }
        set(1, 0, 0, 0);
        tiltUp(ax / norm, ay / norm, az / norm);
    }

    double worldX(double ax, double ay, double az) {
        return (1 - 2 * (y * y + z * z)) * ax + 2 * (x * y - w * z) * ay + 2 * (x * z + w * y) * az;
    }

    double worldY(double ax, double ay, double az) {
        return 2 * (x * y + w * z) * ax + (1 - 2 * (x * x + z * z)) * ay + 2 * (y * z - w * x) * az;
    }

    double worldZ(double ax, double ay, double az) {
        return 2 * (x * z - w * y) * ax + 2 * (y * z + w * x) * ay + (1 - 2 * (x * x + y * y)) * az;
    }

    /** Back to unit length by one Newton step where it is near, which is where a filter's steps leave it. */
    void normalise() {
        double square = w * w + x * x + y * y + z * z;
        double f = Math.abs(square - 1) < 1e-7 ? (3 - square) / 2 : 1 / Math.sqrt(square);
        set(w * f, x * f, y * f, z * f);
    }
}
