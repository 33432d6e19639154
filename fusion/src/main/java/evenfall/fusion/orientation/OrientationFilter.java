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

    /** Whether turns that clipped are made up for before they are told; the filters as published take them as read. */
    default boolean makesUpForClipping() {
        return false;
    }

    /**
     * Tells that the turn of the next sample may be off, for want of samples or because they clipped. A filter with a
     * fixed share of the accelerometer makes nothing of it.
     *
     * @param x about the first sensor axis, rad, and so on
     */
    default void doubt(double x, double y, double z) {}

    /** Tells that the next sample's specific force stood at full scale. */
    default void forceClips() {}

    /**
     * Tells that time is missing before the next sample.
     *
     * @param seconds how much
     * @param doubt how far the turn may be off about any axis, rad
     */
    default void gap(double seconds, double doubt) {}

    /** Scalar part. */
    double w();

    /** First vector part. */
    double x();

    /** Second vector part. */
    double y();

    /** Third vector part. */
    double z();
}
