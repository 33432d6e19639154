package evenfall.ingest.wire;

import evenfall.ingest.place.Place;
import org.jspecify.annotations.Nullable;

/** The numbers by which sensors are told apart on the wire, 0 to FFFF hex. Two of them say where the sensor is. */
public final class SensorId {

    /** The pelvis sensor: the letter P. */
    public static final int PELVIS = 'P';

    /** The upper-back sensor: the letter B. */
    public static final int UPPER_BACK = 'B';

    /** The largest number. */
    public static final int LARGEST = 0xFFFF;

    private SensorId() {}

    /** Where the sensor of this number is, if the number alone says so. */
    public static @Nullable Place place(int sensor) {
        return switch (sensor) {
            case PELVIS -> Place.PELVIS;
            case UPPER_BACK -> Place.UPPER_BACK;
            default -> null;
        };
    }

    /** The number that says a sensor is at this place. */
    public static int at(Place place) {
        return place == Place.PELVIS ? PELVIS : UPPER_BACK;
    }

    /** The number as it is printed for people: four hex digits. */
    public static String text(int sensor) {
        return String.format("%04X", sensor);
    }
}
