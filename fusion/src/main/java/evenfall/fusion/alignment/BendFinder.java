package evenfall.fusion.alignment;

import evenfall.fusion.posture.Motion;
import evenfall.fusion.posture.MotionWindow;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds forward bends between two quiet stances: the sensor leaves the upright by some tens of degrees about a
 * level axis, smoothly, and comes back to where it was.
 *
 * <p>The limits are common practice, no source. A person bends forward, never backward, so the way down tells which
 * end of the axis is the left.
 */
final class BendFinder {

    /** Longest time between the two stances, s. */
    static final double LONGEST_S = 30;

    /** A bend begins where the sensor leaves the upright by this and ends where it comes back to it, rad, */
    private static final double LEAVES = Math.toRadians(7);
    /** or to this share of how deep it went; */
    private static final double BACK_SHARE = 0.2;
    /** it goes as far as this at least and at most, rad, */
    private static final double SHALLOWEST = Math.toRadians(14);

    private static final double DEEPEST = Math.toRadians(130);
    /** and takes as long. */
    private static final double SHORTEST_BEND_S = 1.2;

    private static final double LONGEST_BEND_S = 12;
    /** Picking up, sitting down or jumping shakes more than a slow bend; root mean square about 1 g, m/s². */
    private static final double ROUGHEST = 1.2;
    /** A quick bend shakes as a hinge does, to this; squats leave 0.46 and more, picking up 0.55 (method page). */
    private static final double ROUGHEST_HINGE = 0.45;

    /** One axis tells so much of the turning, */
    private static final double LEAST_SHARE = 0.8;
    /** and is level: its cosine against the vertical is no larger. */
    private static final double STEEPEST_AXIS = 0.4;

    /** A window must say how sure it is, but a motion that nothing corrects does not ask. */
    private static final double UNASKED_SIGMA = 0.01;

    private final Stance before;
    private final Stance after;
    private final Motion motion;
    private final Vector3 upInSensor;
    private final Vector3 gyroBias;
    private final List<ForwardBend> found = new ArrayList<>();

    private BendFinder(SensorStream stream, Stance before, Stance after) {
        this.before = before;
        this.after = after;
        this.upInSensor = before.force().normalised();
        this.gyroBias = before.rate();
        MotionWindow window = new MotionWindow(
                stream,
                before.to() - 1,
                after.from() + 1,
                Quaternion.between(upInSensor, Vector3.UP),
                UNASKED_SIGMA,
                UNASKED_SIGMA,
                gyroBias,
                UNASKED_SIGMA,
                List.of(),
                List.of());
        this.motion = Motion.of(window);
    }

    /** The bends between two stances of a stream, in order. */
    static List<ForwardBend> find(SensorStream stream, Stance before, Stance after) {
        double pause = after.startS() - before.endS();
        if (!(pause > SHORTEST_BEND_S && pause < LONGEST_S)) {
            return List.of();
        }
        BendFinder finder = new BendFinder(stream, before, after);
        finder.cut();
        return finder.found;
    }

    private double lean(int i) {
        return motion.orientation(i).rotate(upInSensor).angleTo(Vector3.UP);
    }

    private void cut() {
        int start = -1;
        int deepest = 0;
        double depth = 0;
        for (int i = 0; i < motion.size(); i++) {
            double lean = lean(i);
            if (start < 0 && lean > LEAVES) {
                start = i;
                depth = 0;
            }
            if (start >= 0 && lean > depth) {
                depth = lean;
                deepest = i;
            }
            if (start >= 0 && lean < Math.max(LEAVES, BACK_SHARE * depth)) {
                judge(start, deepest, i, depth);
                start = -1;
            }
        }
    }

    private void judge(int start, int deepest, int end, double depth) {
        double length = motion.time(end) - motion.time(start);
        if (depth < SHALLOWEST || depth > DEEPEST || length < SHORTEST_BEND_S || length > LONGEST_BEND_S) {
            return;
        }
        PrincipalAxis axis = new PrincipalAxis();
        double rough = 0;
        for (int i = start; i < end; i++) {
            int k = motion.from() + i;
            double rx = motion.stream().gx(k) - gyroBias.x();
            double ry = motion.stream().gy(k) - gyroBias.y();
            double rz = motion.stream().gz(k) - gyroBias.z();
            axis.add(rx, ry, rz, 1);
            if (i < deepest) {
                axis.addSense(rx, ry, rz);
            }
            double off = motion.force(i).norm() - Gravity.STANDARD;
            rough += off * off;
        }
        PrincipalAxis.Axis solved = axis.solve();
        boolean smooth = Math.sqrt(rough / (end - start)) < ROUGHEST
                || new HingeFit(motion, upInSensor, gyroBias).roughness(start, end) < ROUGHEST_HINGE;
        boolean level = Math.abs(solved.direction().dot(upInSensor)) < STEEPEST_AXIS;
        if (smooth && level && solved.share() > LEAST_SHARE) {
            found.add(new ForwardBend(
                    before, after, motion.time(start), motion.time(end), solved.direction(), solved.share(), depth));
        }
    }
}
