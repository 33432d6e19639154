package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;

/**
 * Whether a gyroscope turns the way its accelerometer's axes say. Where the direction of gravity moves within half a second or so,
 * the turn rate must tell the same movement; a mirrored gyroscope tells the opposite one.
 *
 * <p>Looked at are stretches that begin and end with a tenth of a second near 1 g and in which gravity moves by at least
 * 6°. A gyroscope is taken as mirrored when at least four such stretches were seen and the negated rates explain them
 * better by far.
 */
public final class GyroSense {

    private static final double STEP_S = 0.6;
    private static final double MEAN_S = 0.1;
    private static final double LEAST_TURN = Math.toRadians(4);
    private static final double GRAVITY = 9.80665;
    private static final double GRAVITY_ROOM = 0.08 * GRAVITY;
    private static final int LEAST_STRETCHES = 4;
    /** Errors above this count as this, so that one wild stretch does not decide, rad. */
    private static final double MOST = Math.toRadians(30);
    /** Stretches enough to be sure. */
    private static final int ENOUGH = 600;

    private GyroSense() {}

    /**
     * Whether every turn rate of the stream should be negated.
     *
     * @param bias the gyroscope's bias, rad/s
     */
    public static boolean mirrored(SensorStream stream, Vector3 bias) {
        int step = Math.max(4, (int) Math.round(STEP_S * stream.rateHz()));
        int mean = Math.max(2, (int) Math.round(MEAN_S * stream.rateHz()));
        double asIs = 0;
        double negated = 0;
        int seen = 0;
        for (int i = 0; i + step + mean <= stream.size() && seen < ENOUGH; i += step / 2) {
            Vector3 before = mean(stream, i, mean);
            Vector3 after = mean(stream, i + step, mean);
            if (!plain(before) || !plain(after) || before.angleTo(after) < LEAST_TURN) {
                continue;
            }
            if (stream.time(i + step + mean - 1) - stream.time(i) > 1.5 * STEP_S) {
                continue;
            }
            Vector3 start = before.normalised();
            asIs += Math.min(
                    MOST, turned(stream, bias, i + mean / 2, step, start, 1).angleTo(after));
            negated += Math.min(
                    MOST, turned(stream, bias, i + mean / 2, step, start, -1).angleTo(after));
            seen++;
        }
        return seen >= LEAST_STRETCHES && asIs > 1.5 * negated;
    }

    private static Vector3 turned(SensorStream s, Vector3 bias, int from, int steps, Vector3 start, int sense) {
        Quaternion q = Quaternion.IDENTITY;
        for (int i = from + 1; i <= from + steps; i++) {
            Vector3 rate = new Vector3(s.gx(i) - bias.x(), s.gy(i) - bias.y(), s.gz(i) - bias.z());
            q = q.times(Quaternion.fromBodyRate(rate.times(sense), s.time(i) - s.time(i - 1)));
        }
        return q.rotateBack(start);
    }

    private static boolean plain(Vector3 force) {
        return Math.abs(force.norm() - GRAVITY) < GRAVITY_ROOM;
    }

    private static Vector3 mean(SensorStream s, int from, int count) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = from; i < from + count; i++) {
            x += s.ax(i);
            y += s.ay(i);
            z += s.az(i);
        }
        return new Vector3(x / count, y / count, z / count);
    }
}
