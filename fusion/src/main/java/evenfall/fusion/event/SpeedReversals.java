package evenfall.fusion.event;

import java.util.ArrayList;
import java.util.List;

/** Crests of vertical speed, each followed by a trough: the ways down of a stretch. */
final class SpeedReversals {

    /** A change of speed smaller than this is no movement of its own, m/s. */
    private static final double LEAST_CHANGE = 0.35;

    /**
     * A crest and the trough that follows it.
     *
     * @param crest index of the greatest upward speed
     * @param trough index of the greatest downward speed after it
     */
    record WayDown(int crest, int trough) {}

    private enum Heading {
        UNKNOWN,
        UP,
        DOWN
    }

    private SpeedReversals() {}

    /** All ways down in order. */
    static List<WayDown> find(VerticalMotion motion) {
        List<WayDown> found = new ArrayList<>();
        Heading heading = Heading.UNKNOWN;
        int crest = 0;
        int high = 0;
        int low = 0;
        for (int i = 1; i < motion.size(); i++) {
            double speed = motion.speed(i);
            high = speed > motion.speed(high) ? i : high;
            low = speed < motion.speed(low) ? i : low;
            if (heading != Heading.DOWN && motion.speed(high) - speed >= LEAST_CHANGE) {
                heading = Heading.DOWN;
                crest = high;
                low = i;
            } else if (heading != Heading.UP && speed - motion.speed(low) >= LEAST_CHANGE) {
                if (heading == Heading.DOWN) {
                    found.add(new WayDown(crest, low));
                }
                heading = Heading.UP;
                high = i;
            }
        }
        return found;
    }
}
