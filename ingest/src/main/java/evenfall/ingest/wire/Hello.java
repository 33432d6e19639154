package evenfall.ingest.wire;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Gravity;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * What a sensor says of itself in the binary form, in the units of the wire.
 *
 * @param sensor its number, 0 to FFFF hex
 * @param place where it is strapped, if it knows
 * @param accelerationScale g a count
 * @param turnRateScale deg/s a count
 * @param accelerationRange where the accelerometer clips, g
 * @param turnRateRange where the gyroscope clips, deg/s
 * @param rateHz samples a second, about
 * @param name what it is called, at most {@value #LONGEST_NAME} bytes in UTF-8; may be empty
 */
public record Hello(
        int sensor,
        @Nullable Place place,
        float accelerationScale,
        float turnRateScale,
        float accelerationRange,
        float turnRateRange,
        float rateHz,
        String name) {

    /** Bytes of the longest name. */
    public static final int LONGEST_NAME = 64;

    private static final float MOST_G = 1000;
    private static final float MOST_DEGREES = 20_000;
    private static final float MOST_HZ = 100_000;

    /** Refuses what no sensor can be. */
    public Hello {
        if (sensor < 0 || sensor > SensorId.LARGEST) {
            throw new IllegalArgumentException("no number of a sensor: " + sensor);
        }
        if (!possible(accelerationScale, accelerationRange, turnRateScale, turnRateRange, rateHz)) {
            throw new IllegalArgumentException("a scale, a range or the rate of " + SensorId.text(sensor)
                    + " is not above 0 or beyond what a sensor has");
        }
        if (name.getBytes(StandardCharsets.UTF_8).length > LONGEST_NAME) {
            throw new IllegalArgumentException("a name of more than " + LONGEST_NAME + " bytes: " + name);
        }
    }

    /** Whether a sensor can have such scales, ranges and rate. */
    static boolean possible(
            float accelerationScale, float accelerationRange, float turnRateScale, float turnRateRange, float rateHz) {
        return within(accelerationScale, MOST_G / Short.MAX_VALUE)
                && within(accelerationRange, MOST_G)
                && within(turnRateScale, MOST_DEGREES / Short.MAX_VALUE)
                && within(turnRateRange, MOST_DEGREES)
                && within(rateHz, MOST_HZ);
    }

    private static boolean within(float value, float most) {
        return value > 0 && value <= most;
    }

    /** Specific force of one count, m/s². */
    public double accelerationPerCount() {
        return accelerationScale * Gravity.STANDARD;
    }

    /** Turn rate of one count, rad/s. */
    public double turnRatePerCount() {
        return Math.toRadians(turnRateScale);
    }
}
