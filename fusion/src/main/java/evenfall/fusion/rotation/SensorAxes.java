package evenfall.fusion.rotation;

import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.recording.SignedAxis;

/** What a sensor reads, and which way its axes point, as vectors along its own axes; for mathematics outside hot loops. */
public final class SensorAxes {

    private SensorAxes() {}

    /** Specific force at a sample, m/s². */
    public static Vector3 force(SensorStream stream, int i) {
        return new Vector3(stream.ax(i), stream.ay(i), stream.az(i));
    }

    /** Turn rate at a sample, rad/s. */
    public static Vector3 turnRate(SensorStream stream, int i) {
        return new Vector3(stream.gx(i), stream.gy(i), stream.gz(i));
    }

    /**
     * The specific force summed over the samples {@code from} (inclusive) to {@code to} (exclusive), m/s²: it has the direction of
     * the mean force, which points up over a rest, and over seconds of movement as well.
     *
     * @throws IllegalArgumentException if there is no sample between the two
     */
    public static Vector3 forceSum(SensorStream stream, int from, int to) {
        return forceSum(stream, from, to, 1);
    }

    /**
     * The same over every {@code stride}-th sample from the first on.
     *
     * @throws IllegalArgumentException if there is no sample between the two, or no way from one to the next
     */
    public static Vector3 forceSum(SensorStream stream, int from, int to, int stride) {
        if (from >= to || stride < 1) {
            throw new IllegalArgumentException("samples " + from + " to " + to + ", every " + stride);
        }
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = from; i < to; i += stride) {
            x += stream.ax(i);
            y += stream.ay(i);
            z += stream.az(i);
        }
        return new Vector3(x, y, z);
    }

    /** The unit vector along one of the six directions. */
    public static Vector3 direction(SignedAxis axis) {
        return new Vector3(
                axis.axis() == 0 ? axis.sign() : 0,
                axis.axis() == 1 ? axis.sign() : 0,
                axis.axis() == 2 ? axis.sign() : 0);
    }
}
