package evenfall.ingest.wire;

import evenfall.ingest.place.Place;

/** Takes samples by the place of their sensor. */
@FunctionalInterface
public interface SampleReceiver {

    /**
     * One sample of one sensor.
     *
     * @param place which sensor
     * @param timeS the sensor's own clock, s
     * @param ax specific force along the sensor's x, m/s², and so on
     * @param gx turn rate about the sensor's x, rad/s, and so on
     */
    void sample(Place place, double timeS, double ax, double ay, double az, double gx, double gy, double gz);
}
