package evenfall.ingest.wire;

import evenfall.ingest.place.Place;
import java.util.Objects;
import java.util.SplittableRandom;

/** One sample as a test keeps it. */
record Sample(Place place, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {

    /** A sample of a sensor whose number says its place. */
    static Sample of(int sensor, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
        return new Sample(Objects.requireNonNull(SensorId.place(sensor)), timeS, ax, ay, az, gx, gy, gz);
    }

    static Sample random(SplittableRandom random, double timeS) {
        return new Sample(
                random.nextBoolean() ? Place.PELVIS : Place.UPPER_BACK,
                timeS,
                random.nextDouble(-156, 156),
                random.nextDouble(-156, 156),
                random.nextDouble(-156, 156),
                random.nextDouble(-34, 34),
                random.nextDouble(-34, 34),
                random.nextDouble(-34, 34));
    }

    byte[] line() {
        return LineWriter.line(place, timeS, ax, ay, az, gx, gy, gz);
    }
}
