package evenfall.fusion.alignment;

import evenfall.fusion.orientation.OrientationTrack;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;

/**
 * What one sensor of a trunk feels along the vertical, and how far each of its axes points up, on the grid of {@link ForceColumn} and
 * low-passed. By the latter it is known what a bias adds to the force, and what turning adds where the sensor sits away from a point
 * of the trunk: the second derivative of how far up the way there leads.
 */
public final class TrunkEnd {

    private final double[] force;
    /** For each axis of the sensor, -1 to 1; to one part in 10^7, so that ten hours fit. */
    private final float[][] up;

    private TrunkEnd(double[] force, float[][] up) {
        this.force = force;
        this.up = up;
    }

    /** Of a stream whose orientation is known. */
    public static TrunkEnd of(SensorStream stream, OrientationTrack track) {
        double[] force = ClockFinder.smooth(ForceColumn.of(stream, track));
        double[][] axes = axesUp(stream, track, force.length);
        float[][] up = new float[3][];
        for (int axis = 0; axis < 3; axis++) {
            up[axis] = smoothed(axes[axis]);
        }
        return new TrunkEnd(force, up);
    }

    private static double[][] axesUp(SensorStream stream, OrientationTrack track, int size) {
        double[][] up = new double[3][size];
        int after = 1;
        for (int k = 0; k < size; k++) {
            double t = ForceColumn.timeS(k);
            while (after < track.size() - 1 && stream.time(after) < t) {
                after++;
            }
            double start = stream.time(after - 1);
            double part = (t - start) / (stream.time(after) - start);
            Vector3 before = track.at(after - 1).rotateBack(Vector3.UP);
            Vector3 now = before.plus(
                    track.at(after).rotateBack(Vector3.UP).minus(before).times(part));
            up[0][k] = now.x();
            up[1][k] = now.y();
            up[2][k] = now.z();
        }
        return up;
    }

    private static float[] smoothed(double[] values) {
        double[] smooth = ClockFinder.smooth(values);
        float[] result = new float[smooth.length];
        for (int k = 0; k < result.length; k++) {
            result[k] = (float) smooth[k];
        }
        return result;
    }

    /** Places of the grid. */
    int size() {
        return force.length;
    }

    /** The force as felt, less 1 g, m/s². */
    double[] force() {
        return force;
    }

    /** The force at a place between {@code k} and the next, {@code part} of the way. */
    double forceAt(int k, double part) {
        return between(force[k], force[Math.min(k + 1, force.length - 1)], part);
    }

    /** How far an axis points up, likewise. */
    double upAt(int axis, int k, double part) {
        return between(up[axis][k], up[axis][Math.min(k + 1, force.length - 1)], part);
    }

    /** What turning adds for each metre along an axis, likewise, m/s². */
    double turningAt(int axis, int k, double part) {
        return between(turning(axis, k), turning(axis, Math.min(k + 1, force.length - 1)), part);
    }

    private static double between(double one, double next, double part) {
        return one + part * (next - one);
    }

    private double turning(int axis, int k) {
        if (k == 0 || k == force.length - 1) {
            return 0;
        }
        double bend = (double) up[axis][k - 1] - 2.0 * up[axis][k] + up[axis][k + 1];
        return bend / (ForceColumn.STEP_S * ForceColumn.STEP_S);
    }

    /**
     * The force of the point from which the sensor sits away, without its bias.
     *
     * @param arm from that point to the sensor, m, sensor axes
     * @param bias of the sensor, m/s²
     */
    double[] forceWithout(Vector3 arm, Vector3 bias) {
        double[] rest = new double[force.length];
        for (int k = 0; k < rest.length; k++) {
            rest[k] = force[k]
                    - arm.x() * turning(0, k)
                    - arm.y() * turning(1, k)
                    - arm.z() * turning(2, k)
                    - bias.x() * up[0][k]
                    - bias.y() * up[1][k]
                    - bias.z() * up[2][k];
        }
        return rest;
    }
}
