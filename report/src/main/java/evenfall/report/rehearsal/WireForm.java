package evenfall.report.rehearsal;

/** In which form sensors speak. */
public enum WireForm {
    /** Lines of text. */
    TEXT,
    /** Frames of bytes. */
    BINARY,
    /** Frames of bytes, by sensors that do not know where they are. */
    BINARY_UNPLACED
}
