package evenfall.report.measure;

/** What a figure is good for. */
public enum MeasureKind {
    /** A measure of the landing that sessions are compared by. */
    COMPARED,
    /** A part of a group (an angle at one moment), kept for the scientist. */
    DETAIL,
    /** One standard deviation of another figure's error. */
    SIGMA
}
