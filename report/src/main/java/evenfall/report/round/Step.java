package evenfall.report.round;

/** Where a round stands: one way through, and what lies beside it. */
public enum Step {
    /** Who is next? */
    WHO,
    /** How do you feel? */
    FEEL,
    /** No drops today. */
    STOPPED,
    /** Sensors found, at rest, rate right? */
    PUT_ON,
    /** The opening routine. */
    ROUTINE,
    /** Drops. */
    DROPS,
    /** A session that is over. */
    LOOK_BACK,
    /** Who still owes an answer. */
    OWED
}
