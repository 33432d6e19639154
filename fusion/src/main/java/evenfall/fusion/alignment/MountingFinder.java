package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.BodyAxes;
import evenfall.ingest.recording.SignedAxis;
import java.util.List;

/** The rotation from a sensor to its segment from what is known of two directions. */
public final class MountingFinder {

    /** What strap and hand leave of a stated mounting, deg: common practice, no source. */
    private static final double AXES_SIGMA_DEG = 5;
    /** Axes of two straight bends of simulated bodies differ by 0.1 to 0.6 deg; people's differ by more, which then counts. */
    private static final double BEND_SIGMA_DEG = 0.2;
    /** A straight bend strays from one axis by as much, for people sway, deg. */
    private static final double SWAY_DEG = 1.2;
    /** Of what a crooked bend strays beyond that, so much goes into the axis, always to the same side. */
    private static final double CROOKED_PART = 0.65;

    /** So many directions weigh as much as what is usual. */
    private static final double USUAL_COUNT = 2;

    private static final double GUESS_SIGMA_DEG = 90;

    private MountingFinder() {}

    /**
     * Segment axes from the vertical and the left: z along {@code up}, x = left × up, y = z × x (functional alignment,
     * see for example Cutti et al. 2010).
     *
     * @param up the body's up in sensor axes, any length
     * @param left about the body's left in sensor axes, any length, not along {@code up}
     */
    public static Quaternion segmentFromSensor(Vector3 up, Vector3 left) {
        Vector3 z = up.normalised();
        Vector3 x = left.cross(z).normalised();
        Vector3 y = z.cross(x);
        return Quaternion.fromMatrix(new double[][] {
            {x.x(), x.y(), x.z()},
            {y.x(), y.y(), y.z()},
            {z.x(), z.y(), z.z()}
        });
    }

    /** The mounting that a layout file states. */
    public static Mounting ofAxes(BodyAxes axes) {
        Vector3 forward = vector(axes.forward());
        Vector3 up = vector(axes.up());
        return new Mounting(segmentFromSensor(up, up.cross(forward)), MountingMethod.AXES, AXES_SIGMA_DEG);
    }

    /**
     * From the vertical and forward bends.
     *
     * @param up specific force in the quiet stance, sensor axes
     * @param bends at least one
     */
    public static Mounting ofBends(Vector3 up, List<ForwardBend> bends) {
        Vector3 left = Vector3.ZERO;
        double crooked = 0;
        for (ForwardBend bend : bends) {
            left = left.plus(bend.axis());
            crooked += crookedDeg(bend);
        }
        double n = bends.size();
        Vector3 level = left.across(up.normalised());
        double apart = 0;
        for (ForwardBend bend : bends) {
            double angle = Math.toDegrees(bend.axis().across(up.normalised()).angleTo(level));
            apart += angle * angle;
        }
        double bent = Math.sqrt(Math.max(0, square(crooked / n) - square(SWAY_DEG)));
        double sigma =
                Math.sqrt(scatterVariance(apart, bends.size(), BEND_SIGMA_DEG) / n + square(CROOKED_PART * bent));
        return new Mounting(segmentFromSensor(up, left), MountingMethod.BEND, sigma);
    }

    /**
     * The variance of one of several directions: what they scatter, and what such directions usually do as if that had been
     * seen {@link #USUAL_COUNT} times (the mean of an inverse gamma distribution, textbook matter). The larger of both would
     * be too large on average.
     *
     * @param squares sum of the squared distances from their mean
     * @param n how many
     * @param usual one standard deviation of such directions
     */
    public static double scatterVariance(double squares, int n, double usual) {
        return (USUAL_COUNT * usual * usual + squares) / (USUAL_COUNT + n - 1);
    }

    /** How far the turning of a bend strays from one axis, deg. */
    private static double crookedDeg(ForwardBend bend) {
        return Math.toDegrees(Math.atan(Math.sqrt((1 - bend.share()) / bend.share())));
    }

    private static double square(double value) {
        return value * value;
    }

    /**
     * From the vertical and the body's forward.
     *
     * @param forward about forward in sensor axes, not along {@code up}
     * @param sigmaDeg one standard deviation of its heading, deg
     */
    public static Mounting ofForward(Vector3 up, Vector3 forward, MountingMethod method, double sigmaDeg) {
        return new Mounting(segmentFromSensor(up, up.cross(forward)), method, sigmaDeg);
    }

    /** From the vertical alone; forward is the sensor axis nearest to level. */
    public static Mounting ofGravity(Vector3 up) {
        Vector3 z = up.normalised();
        double x = Math.abs(z.x());
        double y = Math.abs(z.y());
        Vector3 forward = Math.abs(z.z()) <= Math.min(x, y)
                ? new Vector3(0, 0, 1)
                : x <= y ? new Vector3(1, 0, 0) : new Vector3(0, 1, 0);
        return ofForward(up, forward, MountingMethod.GRAVITY_ONLY, GUESS_SIGMA_DEG);
    }

    private static Vector3 vector(SignedAxis axis) {
        return new Vector3(
                axis.axis() == 0 ? axis.sign() : 0,
                axis.axis() == 1 ? axis.sign() : 0,
                axis.axis() == 2 ? axis.sign() : 0);
    }
}
