package evenfall.fusion.posture;

import evenfall.fusion.rotation.Vector3;
import java.util.ArrayList;
import java.util.List;

/**
 * What a sensor gets wrong and what a window starts with, as the smoother estimates it. A force f is corrected to
 * f - bias - scale·f, a turn rate likewise, axis by axis.
 *
 * @param forceBias m/s², sensor axes
 * @param forceScale part of the reading, sensor axes
 * @param rateScale part of the reading, sensor axes
 * @param startSpeed m/s, world axes
 * @param startTilt turn of the starting orientation, rad, world axes; its z is 0
 * @param rateBias what is left of the gyroscope's bias, rad/s, sensor axes
 * @param jumps of the speed, m/s, world axes, one for each jolt of the window
 * @param turns of the orientation, rad, world axes, likewise
 */
public record MotionErrors(
        Vector3 forceBias,
        Vector3 forceScale,
        Vector3 rateScale,
        Vector3 startSpeed,
        Vector3 startTilt,
        Vector3 rateBias,
        List<Vector3> jumps,
        List<Vector3> turns) {

    /** Columns that belong to the sensor rather than to one window. */
    static final int SHARED = 9;
    /** Columns of every window before those of its jolts. */
    static final int FIXED = 17;
    /** Columns of one jolt: speed, then turn. */
    static final int JOLT = 6;

    static final int RATE_SCALE = 6;
    static final int START_SPEED = 9;
    static final int START_TILT = 12;
    static final int RATE_BIAS = 14;

    public MotionErrors {
        jumps = List.copyOf(jumps);
        turns = List.copyOf(turns);
    }

    /** Nothing wrong, in a window with so many jolts. */
    static MotionErrors none(int jolts) {
        return of(new double[FIXED + JOLT * jolts]);
    }

    static MotionErrors of(double[] x) {
        List<Vector3> jumps = new ArrayList<>();
        List<Vector3> turns = new ArrayList<>();
        for (int c = FIXED; c < x.length; c += JOLT) {
            jumps.add(vector(x, c));
            turns.add(vector(x, c + 3));
        }
        return new MotionErrors(
                vector(x, 0),
                vector(x, 3),
                vector(x, RATE_SCALE),
                vector(x, START_SPEED),
                new Vector3(x[START_TILT], x[START_TILT + 1], 0),
                vector(x, RATE_BIAS),
                jumps,
                turns);
    }

    private static Vector3 vector(double[] x, int c) {
        return new Vector3(x[c], x[c + 1], x[c + 2]);
    }

    /** A force as it would read without bias and scale error, m/s². */
    public Vector3 correctForce(Vector3 f) {
        return new Vector3(
                f.x() - forceBias.x() - forceScale.x() * f.x(),
                f.y() - forceBias.y() - forceScale.y() * f.y(),
                f.z() - forceBias.z() - forceScale.z() * f.z());
    }
}
