package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;

/**
 * About which axes a gyroscope turns the other way than the accelerometer's axes say. Turned back by the right rates, the
 * specific force of a moving body keeps its mean direction, up, for accelerations average out within half a second; turned
 * back by mirrored rates it wanders off by twice what the body turned.
 *
 * <p>The mean of the first third of a stretch is laid beside the mean of its last third, once for each of the eight choices
 * of signs. A gyroscope is taken as mirrored as a whole when in at least three stretches the rates as they are and the
 * negated ones answer differently and the negated ones explain those stretches better by far. Some axes alone are taken as
 * mirrored where that explains more stretches better still. An axis about which gravity never moves leaves no trace: of
 * choices that explain equally well, all axes come before one, and one before two.
 *
 * @param x whether the turn rate about x is to be negated
 * @param y the same for y
 * @param z the same for z
 */
public record GyroSense(boolean x, boolean y, boolean z) {

    /** A gyroscope as it should be. */
    public static final GyroSense RIGHT = new GyroSense(false, false, false);

    /** Whether any axis is to be negated. */
    public boolean mirrored() {
        return x || y || z;
    }

    /**
     * Finds which turn rates of the stream should be negated.
     *
     * @param bias the gyroscope's bias, rad/s
     */
    public static GyroSense find(SensorStream stream, Vector3 bias) {
        GyroSenseFinder finder = new GyroSenseFinder(stream.rateHz(), stream.size());
        finder.add(stream, bias);
        return finder.sense();
    }
}
