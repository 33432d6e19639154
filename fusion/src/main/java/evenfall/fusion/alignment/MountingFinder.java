package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SensorAxes;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.BodyAxes;
import java.util.List;

/** The rotation from a sensor to its segment from what is known of two directions. */
public final class MountingFinder {

    /** What strap and hand leave of a stated mounting, deg: common practice, no source. */
    private static final double AXES_SIGMA_DEG = 5;
    /** Axes of straight bends of bodies that stray as usual scatter by as much, deg. */
    private static final double BEND_SIGMA_DEG = 0.2;
    /** Bends of bodies that stray more in take-offs and crouches scatter by this power of it more. */
    private static final double BENDS_STRAY = 1.5;
    /** But no further than people who mean to bend straight do: who jumps to the sides on purpose bends as before, deg. */
    private static final double MOST_BEND_SIGMA_DEG = 2;
    /** Part of a bend's variance that all bends of a body share, for it bends to the same side. */
    private static final double SAME_SIDE = 0.25;
    /** A straight bend strays from one axis by as much, for people sway, deg. */
    private static final double SWAY_DEG = 1.2;
    /** Of what a crooked bend strays beyond that, so much goes into the axis, always to the same side. */
    private static final double CROOKED_PART = 0.65;

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
        Vector3 forward = SensorAxes.direction(axes.forward());
        Vector3 up = SensorAxes.direction(axes.up());
        return new Mounting(segmentFromSensor(up, up.cross(forward)), MountingMethod.AXES, AXES_SIGMA_DEG);
    }

    /**
     * From the vertical and forward bends.
     *
     * @param up specific force in the quiet stance, sensor axes
     * @param bends at least one
     * @param straying how far the person strays
     */
    public static Mounting ofBends(Vector3 up, List<ForwardBend> bends, Straying straying) {
        int n = bends.size();
        double usual = Math.min(MOST_BEND_SIGMA_DEG, BEND_SIGMA_DEG * Math.pow(straying.factor(), BENDS_STRAY));
        double variance = Straying.variance(squaresDeg(up, bends), n, usual);
        double sigma = Math.sqrt(variance * (1.0 / n + SAME_SIDE) + square(CROOKED_PART * bentDeg(bends)));
        return new Mounting(segmentFromSensor(up, left(bends)), MountingMethod.BEND, sigma);
    }

    /** How far a person strays by bends alone; crooked ones, which turn about no one axis, tell nothing of it. */
    public static Straying strayingOf(Vector3 up, List<ForwardBend> bends) {
        return bends.isEmpty() || bentDeg(bends) > 0
                ? Straying.USUAL
                : Straying.USUAL.with(squaresDeg(up, bends), bends.size(), BEND_SIGMA_DEG);
    }

    private static Vector3 left(List<ForwardBend> bends) {
        return bends.stream().map(ForwardBend::axis).reduce(Vector3.ZERO, Vector3::plus);
    }

    /** Sum of the squared angles between the level parts of the bends' axes and their mean, deg². */
    private static double squaresDeg(Vector3 up, List<ForwardBend> bends) {
        Vector3 vertical = up.normalised();
        Vector3 level = left(bends).across(vertical);
        double squares = 0;
        for (ForwardBend bend : bends) {
            squares += square(Math.toDegrees(bend.axis().across(vertical).angleTo(level)));
        }
        return squares;
    }

    /** How far bends stray from one axis beyond what people sway, deg. */
    private static double bentDeg(List<ForwardBend> bends) {
        double crooked = 0;
        for (ForwardBend bend : bends) {
            crooked += crookedDeg(bend);
        }
        return Math.sqrt(Math.max(0, square(crooked / bends.size()) - square(SWAY_DEG)));
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
        Vector3 forward = Math.abs(z.z()) <= Math.min(x, y) ? Vector3.UP : x <= y ? Vector3.X : Vector3.Y;
        return ofForward(up, forward, MountingMethod.GRAVITY_ONLY, GUESS_SIGMA_DEG);
    }
}
