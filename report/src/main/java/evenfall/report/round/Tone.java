package evenfall.report.round;

/** What is heard without words. */
public enum Tone {
    /** A step is done, the next begins. */
    STEP,
    /** All is done. */
    READY,
    /** Look here. */
    ALARM
}
