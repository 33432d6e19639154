package evenfall.report.statistics;

/**
 * Left against right as a share, of quantities that cannot be nothing or less: near zero such shares run away. Left is the
 * positive side in both.
 */
public final class Symmetry {

    private static final double EVEN = 45;
    private static final double MOST = 90;

    private Symmetry() {}

    /** 100 (L - R) / (½ (L + R)), after Robinson, Herzog and Nigg 1987 (JMPT 10:172), %. */
    public static double index(double left, double right) {
        return 100 * (left - right) / ((left + right) / 2);
    }

    /** How far the point (right, left) lies from the line of equals: the symmetry angle of Zifchock et al. 2008 (Gait Posture 27:622), %. */
    public static double angle(double left, double right) {
        double off = EVEN - Math.toDegrees(Math.atan(right / left));
        return 100 * (off > MOST ? off - 2 * MOST : off) / MOST;
    }
}
