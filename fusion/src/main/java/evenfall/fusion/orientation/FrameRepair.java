package evenfall.fusion.orientation;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns the drifting frame back where a gap or clipped turn rates may have made it jump.
 *
 * <p>On both sides of such a doubt the mean specific force points up, but for the speed that the body gains meanwhile. So
 * the turn that lays the mean after it onto the mean before it is the jump's tilt, as far as the doubt is larger than
 * what the speed may do. About the vertical nothing can be told.
 */
final class FrameRepair {

    /** Doubts below this are left to the low-pass, rad. */
    private static final double LEAST_DOUBT = 0.02;

    /** Doubts nearer together than this are one, s. */
    private static final double TOGETHER = 0.25;

    /** Longest stretch of specific force on either side, s. */
    private static final double LONGEST_VIEW = 3;

    /** Shortest stretch that tells anything, s. */
    private static final double SHORTEST_VIEW = 1;

    private final List<Integer> starts = new ArrayList<>();
    private final List<Quaternion> turns = new ArrayList<>();

    private FrameRepair() {}

    /**
     * Finds the repairs and turns {@code force} by them.
     *
     * @param force three columns of mean specific force in the drifting frame, a block a row
     * @param doubt how far the turn within a block may be off, rad
     * @param blockTime length of a block, s
     */
    static FrameRepair of(float[][] force, float[] doubt, double blockTime) {
        FrameRepair repair = new FrameRepair();
        int view = (int) (LONGEST_VIEW / blockTime);
        int together = (int) Math.ceil(TOGETHER / blockTime);
        Quaternion turn = Quaternion.IDENTITY;
        int done = 0;
        int viewStart = 0;
        int k = nextDoubt(doubt, 0);
        while (k < doubt.length) {
            int last = k;
            double size = doubt[k];
            int next = nextDoubt(doubt, k + 1);
            while (next < doubt.length && next - last <= together) {
                last = next;
                size += doubt[next];
                next = nextDoubt(doubt, next + 1);
            }
            rotate(force, done, k, turn);
            done = k;
            int from = Math.max(viewStart, k - view);
            int to = Math.min(next, last + 1 + view);
            if (size >= LEAST_DOUBT) {
                double before = (k - from) * blockTime;
                double after = (to - last - 1) * blockTime;
                if (before >= SHORTEST_VIEW && after >= SHORTEST_VIEW) {
                    Quaternion jump = Quaternion.between(turn.rotate(mean(force, last + 1, to)), mean(force, from, k));
                    double noise = Math.hypot(InertialFilter.TELLING / before, InertialFilter.TELLING / after);
                    double share = size * size / (size * size + noise * noise);
                    turn = Quaternion.IDENTITY.slerp(jump, share).times(turn);
                    repair.starts.add(k);
                    repair.turns.add(turn);
                }
                viewStart = last + 1;
            }
            k = next;
        }
        rotate(force, done, force[0].length, turn);
        return repair;
    }

    /** Number of repairs. */
    int size() {
        return starts.size();
    }

    /** First block of repair {@code r}. */
    int start(int r) {
        return starts.get(r);
    }

    /** The turn of the frame from there on, all repairs before included. */
    Quaternion turn(int r) {
        return turns.get(r);
    }

    private static int nextDoubt(float[] doubt, int from) {
        int k = from;
        while (k < doubt.length && doubt[k] == 0) {
            k++;
        }
        return k;
    }

    private static Vector3 mean(float[][] force, int from, int to) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int k = from; k < to; k++) {
            x += force[0][k];
            y += force[1][k];
            z += force[2][k];
        }
        Vector3 sum = new Vector3(x, y, z);
        return sum.norm() > 0 ? sum : Vector3.UP;
    }

    private static void rotate(float[][] force, int from, int to, Quaternion turn) {
        for (int k = from; k < to; k++) {
            Vector3 f = turn.rotate(new Vector3(force[0][k], force[1][k], force[2][k]));
            force[0][k] = (float) f.x();
            force[1][k] = (float) f.y();
            force[2][k] = (float) f.z();
        }
    }
}
