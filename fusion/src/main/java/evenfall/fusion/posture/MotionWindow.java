package evenfall.fusion.posture;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;
import java.util.BitSet;
import java.util.List;

/**
 * A stretch of one sensor's stream with what is known beforehand of the motion in it.
 *
 * @param stream the samples
 * @param from index of the first sample of the stretch
 * @param to index after the last one
 * @param start world from sensor at {@code from}, level by the stance there, heading free
 * @param startTiltSigma one standard deviation of that level, rad
 * @param startSpeedSigma one standard deviation of the speed at {@code from} about 0, m/s
 * @param gyroBias turn rate of the still sensor, rad/s
 * @param gyroBiasSigma one standard deviation of that, rad/s
 * @param rests moments at which the speed is near 0
 * @param jolts moments at which speed and orientation may be misjudged by a jump
 */
public record MotionWindow(
        SensorStream stream,
        int from,
        int to,
        Quaternion start,
        double startTiltSigma,
        double startSpeedSigma,
        Vector3 gyroBias,
        double gyroBiasSigma,
        List<Rest> rests,
        List<Jolt> jolts) {

    public MotionWindow {
        if (from < 0 || to > stream.size() || to - from < 2) {
            throw new IllegalArgumentException("samples " + from + " to " + to + " of " + stream.size());
        }
        rests = List.copyOf(rests);
        jolts = List.copyOf(jolts);
    }

    /** Number of samples. */
    public int size() {
        return to - from;
    }

    /** The samples with jolts, counted in the stretch. */
    BitSet joltedSamples() {
        BitSet samples = new BitSet();
        for (Jolt jolt : jolts) {
            if (jolt.index() >= from && jolt.index() < to) {
                samples.set(jolt.index() - from);
            }
        }
        return samples;
    }

    /**
     * The speed is near 0.
     *
     * @param index sample of the stream
     * @param sigma one standard deviation of the speed of each axis, m/s
     */
    public record Rest(int index, double sigma) {}

    /**
     * The integrals of force and turn rate may be wrong by a jump: an impact that the sampling cuts short, a clipped peak, a gap.
     *
     * @param index sample of the stream after which the speed has jumped
     * @param speed how far the jump of the speed may be off, m/s, sensor axes
     * @param turn how far the jump of the orientation may be off, rad, sensor axes
     * @param tiltSigma one standard deviation of what the orientation may be off besides about each horizontal axis, rad
     * @param unseen whether nothing was recorded meanwhile
     */
    public record Jolt(int index, Covariance speed, Covariance turn, double tiltSigma, boolean unseen) {

        /** This jolt and a later one as one, at the moment of the later. */
        public Jolt with(Jolt later) {
            return new Jolt(
                    later.index,
                    speed.plus(later.speed),
                    turn.plus(later.turn),
                    Math.hypot(tiltSigma, later.tiltSigma),
                    unseen && later.unseen);
        }
    }
}
