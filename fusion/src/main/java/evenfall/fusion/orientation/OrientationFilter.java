package evenfall.fusion.orientation;

/**
 * A causal orientation filter that is fed one sample at a time; live and after the session alike.
 *
 * <p>After each step the four parts are the orientation, world from sensor, once that sample's turn rate has acted.
 * Not safe for use from several threads.
 */
public interface OrientationFilter {

    /**
     * Takes the next sample.
     *
     * @param seconds the interval that ends at this sample, s, not below 0
     * @param ax specific force, sensor axes, m/s², and so on
     * @param gx turn rate, sensor axes, rad/s, and so on
     */
    void step(double seconds, double ax, double ay, double az, double gx, double gy, double gz);

    /**
     * Tells that the turn of the next sample may be off by {@code angle} (rad), for want of samples or because they
     * clipped. A filter with a fixed share of the accelerometer makes nothing of it.
     */
    default void doubt(double angle) {}

    /** Scalar part. */
    double w();

    /** First vector part. */
    double x();

    /** Second vector part. */
    double y();

    /** Third vector part. */
    double z();
}
