package evenfall.report.paper;

import java.io.IOException;

/** Something that stands in a column of given width. */
interface Piece {

    /** Its height with the empty space above it, pt. */
    float height(Letters letters, float width) throws IOException;

    /** Prints it from the printer's place on and moves that place below it; may go on over pages. */
    void print(Printer printer) throws IOException;

    /** Whether the piece after it must begin on the same page. */
    default boolean leads() {
        return false;
    }
}
