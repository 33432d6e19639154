package evenfall.fusion.event;

/** What a descent turned out to be, or why it is no landing. */
enum Verdict {
    LANDING,
    /** Has neighbours of like strength. */
    STEP,
    /** A landing but for the body, which does not end upright. */
    NOT_UPRIGHT,
    /** No standing still near, before or after, and no long flight. */
    NO_REST,
    /** Hardly any downward speed is taken away. */
    NO_BRAKE,
    /** Neither fast, light and hard enough for a drop, nor up and down again as a jump. */
    TOO_GENTLE,
    /** Weaker than a landing just before, which it catches. */
    CATCH
}
