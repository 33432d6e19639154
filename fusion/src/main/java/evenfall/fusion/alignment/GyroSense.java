package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;

/**
 * Whether a gyroscope turns the way its accelerometer's axes say. Turned back by the right rates, the specific force of a
 * moving body keeps its mean direction, up, for accelerations average out within half a second; turned back by mirrored
 * rates it wanders off by twice what the body turned.
 *
 * <p>The mean of the first third of a stretch is laid beside the mean of its last third, once by the rates as they are and once
 * by the negated ones. A gyroscope is taken as mirrored when in at least three stretches the two answers differ and the
 * negated rates explain those stretches better by far.
 */
public final class GyroSense {

    private static final double STRETCH_S = 1.2;
    /** Stretches whose samples take longer than this share of their due time hold a gap. */
    private static final double GAP_SHARE = 1.1;
    /** Answers nearer to one another than this tell nothing, rad. */
    private static final double LEAST_DIFFERENCE = Math.toRadians(3);

    private static final int LEAST_STRETCHES = 3;
    /** Errors above this count as this, so that one wild stretch does not decide, rad. */
    private static final double MOST = Math.toRadians(30);
    /** Squared errors must differ by this factor: right gyroscopes of people reached 1.1, nine in ten mirrored ones pass it. */
    private static final double LEAST_RATIO = 2.5;
    /** Stretches enough to be sure. */
    private static final int ENOUGH = 600;

    private GyroSense() {}

    /**
     * Whether every turn rate of the stream should be negated.
     *
     * @param bias the gyroscope's bias, rad/s
     */
    public static boolean mirrored(SensorStream stream, Vector3 bias) {
        int third = Math.max(2, (int) Math.round(STRETCH_S / 3 * stream.rateHz()));
        double asIs = LEAST_DIFFERENCE * LEAST_DIFFERENCE;
        double negated = asIs;
        int seen = 0;
        for (int i = 0; i + 3 * third <= stream.size() && seen < ENOUGH; i += third) {
            if (stream.time(i + 3 * third - 1) - stream.time(i) > GAP_SHARE * STRETCH_S) {
                continue;
            }
            double right = Math.min(MOST, wandering(stream, bias, i, third, 1));
            double mirror = Math.min(MOST, wandering(stream, bias, i, third, -1));
            if (Math.abs(right - mirror) > LEAST_DIFFERENCE) {
                asIs += right * right;
                negated += mirror * mirror;
                seen++;
            }
        }
        return seen >= LEAST_STRETCHES && asIs > LEAST_RATIO * negated;
    }

    /** Angle between the mean forces of the first and the last third, both turned into the axes of the first sample, rad. */
    private static double wandering(SensorStream s, Vector3 bias, int from, int third, int sense) {
        Quaternion q = Quaternion.IDENTITY;
        Vector3 first = Vector3.ZERO;
        Vector3 last = Vector3.ZERO;
        for (int k = 0; k < 3 * third; k++) {
            int i = from + k;
            if (k > 0) {
                Vector3 rate = new Vector3(s.gx(i) - bias.x(), s.gy(i) - bias.y(), s.gz(i) - bias.z());
                q = q.times(Quaternion.fromBodyRate(rate.times(sense), s.time(i) - s.time(i - 1)));
            }
            if (k < third) {
                first = first.plus(q.rotate(new Vector3(s.ax(i), s.ay(i), s.az(i))));
            } else if (k >= 2 * third) {
                last = last.plus(q.rotate(new Vector3(s.ax(i), s.ay(i), s.az(i))));
            }
        }
        return first.norm() > 0 && last.norm() > 0 ? first.angleTo(last) : 0;
    }
}
