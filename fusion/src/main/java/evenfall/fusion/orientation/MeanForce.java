package evenfall.fusion.orientation;

import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;

/** The tilt that the mean of all force since a start tells, in the frame that the turn rate alone carries along. */
final class MeanForce {

    /**
     * Seconds of force that tell the tilt as well as a doubt of 1 rad does: a body whose speed changes by 0.5 m/s
     * meanwhile makes the mean force lean by 0.5 m/s over g and the time.
     */
    private static final double TELLING = 0.05;

    /** What the turn rate alone tells. */
    final Attitude turned = new Attitude();

    /** The turn that the mean force lays on it. */
    final Attitude tilt = new Attitude();

    /** How much force is in the mean, s. */
    double seconds;

    private double x;
    private double y;
    private double z;

    /**
     * Begins at an orientation whose tilt is in doubt by {@code doubt} (rad); 0: nothing of it is believed. It counts as
     * no more than what was in the mean before.
     */
    void begin(Attitude from, double doubt) {
        turned.set(from.w, from.x, from.y, from.z);
        tilt.set(1, 0, 0, 0);
        seconds = doubt > 0 ? Math.min(TELLING / doubt, seconds) : 0;
        x = 0;
        y = 0;
        z = seconds * Gravity.STANDARD;
    }

    void add(double duration, double fx, double fy, double fz) {
        seconds += duration;
        x += turned.worldX(fx, fy, fz) * duration;
        y += turned.worldY(fx, fy, fz) * duration;
        z += turned.worldZ(fx, fy, fz) * duration;
        double size = Vector3.length(x, y, z);
        if (size > 0) {
            tilt.set(1, 0, 0, 0);
            tilt.tiltUp(x / size, y / size, z / size);
        }
    }
}
