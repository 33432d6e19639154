package evenfall.fusion.orientation;

/**
 * Complementary filter on inclination: the gyroscope's turn, drawn towards the accelerometer's vertical by a small part
 * of the angle between them at each sample.
 *
 * <p>About one axis this is the usual angle = a (angle + rate T) + (1 - a) tilt with a = tau / (tau + T); the turn is
 * made along the shortest way so that it holds about any axis. A sample of no specific force at all only turns.
 */
public final class ComplementaryFilter implements OrientationFilter {

    /** Time constant, s: of 0.5 to 10 s one in the flat part (docs/tried.md). */
    public static final double DEFAULT_TIME_CONSTANT = 3.0;

    private final double timeConstant;
    private final Attitude q = new Attitude();
    private boolean started;

    /** A filter that starts from the tilt of its first sample, with a time constant in s, above 0. */
    public ComplementaryFilter(double timeConstant) {
        this.timeConstant = timeConstant;
    }

    @Override
    public void step(double seconds, double ax, double ay, double az, double gx, double gy, double gz) {
        boolean pulls = ax != 0 || ay != 0 || az != 0;
        if (!started && pulls) {
            q.setFromForce(ax, ay, az);
            started = true;
        }
        q.turnByBodyRate(gx, gy, gz, seconds);
        if (!pulls) {
            return;
        }
        double ux = q.worldX(ax, ay, az);
        double uy = q.worldY(ax, ay, az);
        double uz = q.worldZ(ax, ay, az);
        double level = Math.sqrt(ux * ux + uy * uy);
        if (level > 0) {
            double half = Math.atan2(level, uz) * seconds / (timeConstant + seconds) / 2;
            double s = Math.sin(half) / level;
            q.tiltBy(Math.cos(half), s * uy, -s * ux);
        }
    }

    @Override
    public double w() {
        return q.w;
    }

    @Override
    public double x() {
        return q.x;
    }

    @Override
    public double y() {
        return q.y;
    }

    @Override
    public double z() {
        return q.z;
    }
}
