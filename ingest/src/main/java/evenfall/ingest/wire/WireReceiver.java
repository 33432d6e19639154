package evenfall.ingest.wire;

/** Takes what is read from the wire, by sensor, whether it is known where that sensor is strapped or not. */
@FunctionalInterface
public interface WireReceiver {

    /**
     * One sample of one sensor.
     *
     * @param sensor the sensor's own number, see {@link SensorId}
     * @param timeS the sensor's own clock, s
     * @param ax specific force along the sensor's x, m/s², and so on
     * @param gx turn rate about the sensor's x, rad/s, and so on
     */
    void sample(int sensor, double timeS, double ax, double ay, double az, double gx, double gy, double gz);

    /** A sensor says, now and then, what it is; always before its first sample in the binary form. */
    default void hello(Hello hello) {}

    /**
     * So many samples of a sensor did not come.
     *
     * @param sensor the sensor's own number
     * @param samples how many, above 0
     */
    default void lost(int sensor, long samples) {}
}
