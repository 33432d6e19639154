package evenfall.report.round;

import evenfall.fusion.landing.Side;
import evenfall.report.log.LandingNote;
import org.jspecify.annotations.Nullable;

/**
 * What the coach said of the landings to come; null where nothing was said, for nothing is made up.
 *
 * @param foot the foot or feet
 * @param heightM drop height, m
 * @param surface what is landed on
 */
public record Plan(
        @Nullable Side foot,
        @Nullable Double heightM,
        @Nullable String surface) {

    /** Nothing was said. */
    public static final Plan NONE = new Plan(null, null, null);

    /** With this foot, or without one if it was this one. */
    public Plan press(Side pressed) {
        return new Plan(pressed == foot ? null : pressed, heightM, surface);
    }

    /** With this height, m, or without one if it was this one. */
    public Plan press(double metres) {
        return new Plan(foot, heightM != null && heightM == metres ? null : Double.valueOf(metres), surface);
    }

    /** With this surface, or without one if it was this one. */
    public Plan press(String pressed) {
        return new Plan(foot, heightM, pressed.equals(surface) ? null : pressed);
    }

    LandingNote note() {
        return new LandingNote(foot, heightM, surface, null, null, null);
    }
}
