package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import java.util.ArrayList;
import java.util.List;

/**
 * Joins what several sources say of a sensor's mounting. All agree on the vertical, so they differ by a turn about it: the
 * mean turn, weighed by inverse variance. With three or more, one that differs from the mean of the others by more than
 * 2.5 of their joint sigmas is left out; where the rest still differ by more than they say, the sigma grows with it
 * (Birge's ratio: Birge 1932, Physical Review 40:207).
 */
public final class HeadingMean {

    /** Of the joint sigma of a source and the mean of the others. */
    private static final double TOO_FAR = 2.5;
    /** Of two sources that differ nobody knows which is wrong. */
    private static final int LEAST_TO_DOUBT = 3;

    private HeadingMean() {}

    /**
     * The joint mounting, with the method of the surest source.
     *
     * @param sources at least one
     */
    public static Mounting of(List<Mounting> sources) {
        Mounting surest = sources.get(0);
        for (Mounting source : sources) {
            surest = source.sigmaDeg() < surest.sigmaDeg() ? source : surest;
        }
        List<double[]> turns = new ArrayList<>();
        for (Mounting source : sources) {
            turns.add(new double[] {turnDeg(surest, source), source.sigmaDeg() * source.sigmaDeg()});
        }
        while (turns.size() >= LEAST_TO_DOUBT && leaveOutWorst(turns)) {
            // One at a time: an outlier makes the others look wrong.
        }
        double[] mean = mean(turns);
        double apart = 0;
        for (double[] turn : turns) {
            apart += square(turn[0] - mean[0]) / turn[1];
        }
        double ratio = turns.size() > 1 ? Math.max(1, apart / (turns.size() - 1)) : 1;
        Quaternion joint =
                Quaternion.about(Vector3.UP, -Math.toRadians(mean[0])).times(surest.segmentFromSensor());
        return new Mounting(joint, surest.method(), Math.sqrt(mean[1] * ratio));
    }

    /** How far the other's forward is turned to the left of the one's, deg. */
    public static double turnDeg(Mounting one, Mounting other) {
        Vector3 forward =
                one.segmentFromSensor().rotate(other.segmentFromSensor().rotateBack(Vector3.X));
        return Math.toDegrees(Math.atan2(forward.y(), forward.x()));
    }

    private static boolean leaveOutWorst(List<double[]> turns) {
        int worst = -1;
        double most = TOO_FAR;
        for (int k = 0; k < turns.size(); k++) {
            List<double[]> others = new ArrayList<>(turns);
            double[] one = others.remove(k);
            double[] mean = mean(others);
            double apart = Math.abs(one[0] - mean[0]) / Math.sqrt(one[1] + mean[1]);
            if (apart > most) {
                most = apart;
                worst = k;
            }
        }
        if (worst >= 0) {
            turns.remove(worst);
        }
        return worst >= 0;
    }

    /** Weighted mean and its variance. */
    private static double[] mean(List<double[]> turns) {
        double sum = 0;
        double weights = 0;
        for (double[] turn : turns) {
            sum += turn[0] / turn[1];
            weights += 1 / turn[1];
        }
        return new double[] {sum / weights, 1 / weights};
    }

    private static double square(double value) {
        return value * value;
    }
}
