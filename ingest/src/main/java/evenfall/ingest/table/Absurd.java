package evenfall.ingest.table;

import evenfall.ingest.recording.Gravity;

/** Values that no sensor on a body gives; above the widest ranges sold (400 g, 4000 deg/s; common practice, no source). */
final class Absurd {

    /** 1000 g, m/s². */
    static final double ACCELERATION = 1000 * Gravity.STANDARD;

    /** About 57 000 deg/s, rad/s. */
    static final double TURN_RATE = 1000;

    private Absurd() {}
}
