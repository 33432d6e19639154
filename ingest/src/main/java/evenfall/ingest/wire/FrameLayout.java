package evenfall.ingest.wire;

/** Where things stand in frames of version 1, before they are stuffed. Numbers are little-endian. */
final class FrameLayout {

    /** First byte: version in the upper half, kind in the lower. */
    static final int SAMPLE = 0x11;

    static final int HELLO = 0x12;

    static final int SENSOR = 1;

    static final int SAMPLE_SEQUENCE = 3;
    static final int SAMPLE_CLOCK = 5;
    static final int SAMPLE_COUNTS = 9;
    static final int SAMPLE_END = 21;

    static final int HELLO_CLOCK = 3;
    static final int HELLO_PLACE = 11;
    static final int HELLO_ACCELERATION_SCALE = 12;
    static final int HELLO_TURN_RATE_SCALE = 16;
    static final int HELLO_ACCELERATION_RANGE = 20;
    static final int HELLO_TURN_RATE_RANGE = 24;
    static final int HELLO_RATE = 28;
    static final int HELLO_NAME_LENGTH = 32;
    static final int HELLO_NAME = 33;

    /** Bytes of the checksum behind all others, its upper byte first. */
    static final int CHECKSUM = 2;

    static final int PLACE_UNKNOWN = 0;
    static final int PLACE_PELVIS = 1;
    static final int PLACE_UPPER_BACK = 2;

    /** A longer frame, stuffed, its ending 0 not counted, is none. */
    static final int LONGEST = 255;

    private FrameLayout() {}
}
