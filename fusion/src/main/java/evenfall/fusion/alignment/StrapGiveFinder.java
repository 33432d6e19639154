package evenfall.fusion.alignment;

import evenfall.fusion.filtering.Biquad;
import evenfall.fusion.filtering.Butterworth;
import evenfall.fusion.filtering.ZeroPhase;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SensorAxes;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;

/**
 * Finds how a sensor tips on its strap from its landings. Between 12 and 25 Hz a trunk hardly turns, but the force of a
 * landing has much to say: what the sensor turns there in step with the force is the strap's doing. Least squares of the
 * turned angle on the force over all landings, drawn to 0 by how much straps usually give.
 */
public final class StrapGiveFinder {

    /** In this band a trunk hardly turns, while the force of a landing has much to say. */
    private static final double LOWEST_HZ = 12;

    private static final double HIGHEST_HZ = 25;
    /** Slower sensors do not see the band. */
    private static final double SLOWEST_RATE_HZ = 70;

    /** A landing's force counts from so long before contact to so long after it. */
    private static final double BEFORE_S = 0.05;

    private static final double AFTER_S = 0.25;
    /** The filters' own start and end stay outside, s. */
    private static final double ROOM_S = 0.25;

    /** Usual give, rad per m/s²: 0.3 deg per g (common practice, no source). */
    private static final double USUAL_GIVE = Math.toRadians(0.3) / Gravity.STANDARD;
    /**
     * A strap's own frequency lies not far above the band, where it gives more than under a slow force: by a third at half
     * of it, more than twice at three quarters. Half of what the band says is left for slow forces.
     */
    private static final double SLOW_PART = 0.5;
    /** What trunks do turn in the band, rad. */
    private static final double BODY_TURN = Math.toRadians(0.2);

    private final SensorStream stream;
    private double zz;
    private double zx;
    private double xx;
    private double zTurn;
    private double xTurn;

    /** A finder for one sensor; landings are added one by one. */
    public StrapGiveFinder(SensorStream stream) {
        this.stream = stream;
    }

    /**
     * Adds a landing; one with a gap or a clipped sample near it is passed over.
     *
     * @param contactS s on the sensor's clock
     */
    public void add(double contactS, Quaternion segmentFromSensor) {
        double rateHz = stream.rateHz();
        int from = stream.indexAtOrBefore(contactS - BEFORE_S - ROOM_S);
        int to = stream.indexAtOrBefore(contactS + AFTER_S + ROOM_S);
        if (rateHz < SLOWEST_RATE_HZ || from < 0 || to + 1 >= stream.size() || broken(from, to)) {
            return;
        }
        int n = to - from + 1;
        double[][] force = new double[3][n];
        double[][] turned = new double[2][n];
        for (int i = 0; i < n; i++) {
            int k = from + i;
            Vector3 f = segmentFromSensor.rotate(SensorAxes.force(stream, k));
            Vector3 rate = segmentFromSensor.rotate(SensorAxes.turnRate(stream, k));
            force[0][i] = f.x();
            force[1][i] = f.y();
            force[2][i] = f.z();
            turned[0][i] = rate.x() / rateHz + (i > 0 ? turned[0][i - 1] : 0);
            turned[1][i] = rate.y() / rateHz + (i > 0 ? turned[1][i - 1] : 0);
        }
        double[] fx = band(force[0], rateHz);
        double[] fy = band(force[1], rateHz);
        double[] fz = band(force[2], rateHz);
        double[] right = band(turned[0], rateHz);
        double[] forward = band(turned[1], rateHz);
        for (int i = 0; i < n; i++) {
            double sinceContact = stream.time(from + i) - contactS;
            if (sinceContact >= -BEFORE_S && sinceContact <= AFTER_S) {
                zz += fz[i] * fz[i] / rateHz;
                zx += fz[i] * fx[i] / rateHz;
                xx += (fx[i] * fx[i] + fy[i] * fy[i]) / rateHz;
                zTurn += fz[i] * forward[i] / rateHz;
                xTurn += (fx[i] * forward[i] - fy[i] * right[i]) / rateHz;
            }
        }
    }

    private boolean broken(int from, int to) {
        for (int k = from; k <= to; k++) {
            if (stream.accelerationClipped(k) || stream.turnRateClipped(k)) {
                return true;
            }
        }
        return stream.hasGapWithin(stream.time(from), stream.time(to));
    }

    private static double[] band(double[] x, double rateHz) {
        Biquad wide = Butterworth.lowPass(HIGHEST_HZ, rateHz);
        Biquad narrow = Butterworth.lowPass(LOWEST_HZ, rateHz);
        double[] y = ZeroPhase.filter(wide, x);
        subtract(y, ZeroPhase.filter(narrow, y));
        return y;
    }

    private static void subtract(double[] from, double[] values) {
        for (int i = 0; i < from.length; i++) {
            from[i] -= values[i];
        }
    }

    /** What the landings added tell; nothing without landings. */
    public StrapGive solve() {
        // A band of so many hertz holds about twice as many independent values a second.
        double weight = 2 * (HIGHEST_HZ - LOWEST_HZ) / (BODY_TURN * BODY_TURN);
        double prior = 1 / (USUAL_GIVE * USUAL_GIVE);
        double a = weight * zz + prior;
        double b = weight * zx;
        double d = weight * xx + prior;
        double det = a * d - b * b;
        double slow = SLOW_PART * weight / det;
        return new StrapGive(slow * (d * zTurn - b * xTurn), slow * (a * xTurn - b * zTurn));
    }
}
