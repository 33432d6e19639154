package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.ingest.recording.SensorStream;

/**
 * Whether a gyroscope gave nothing while a landing went on. No body lands without turning at all, and no sensor is free
 * of noise: the same three values throughout are those of a broken part, and no angle, speed or place follows from them.
 */
final class DeadGyroscope {

    /** Looked at from so long before contact to so long after it, s: nobody holds still then. Common practice, no source. */
    private static final double BEFORE_S = 0.1;

    private static final double AFTER_S = 0.4;
    /** Fewer samples than this may be alike by chance. */
    private static final int LEAST_SAMPLES = 10;

    private DeadGyroscope() {}

    /** Whether all turn rates about a contact, s on the sensor's own clock, are one and the same. */
    static boolean at(Motion motion, double contactS) {
        SensorStream s = motion.stream();
        int from = motion.from() + motion.indexAt(contactS - BEFORE_S);
        int to = motion.from() + motion.indexAt(contactS + AFTER_S);
        for (int i = from + 1; i <= to; i++) {
            if (s.gx(i) != s.gx(from) || s.gy(i) != s.gy(from) || s.gz(i) != s.gz(from)) {
                return false;
            }
        }
        return to - from >= LEAST_SAMPLES;
    }
}
