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
     * @param trust what of it clipped
     */
    void step(double seconds, double ax, double ay, double az, double gx, double gy, double gz, SampleTrust trust);

    /**
     * Tells that {@code seconds} are missing before the next sample. Nothing is made up for them: the orientation stays
     * where it was, and the filter may trust it less from here.
     */
    default void gap(double seconds) {}

    /** Scalar part. */
    double w();

    /** First vector part. */
    double x();

    /** Second vector part. */
    double y();

    /** Third vector part. */
    double z();
}
