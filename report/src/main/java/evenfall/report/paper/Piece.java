package evenfall.report.paper;

import java.io.IOException;
import java.util.List;

/** Something that stands in a column of given width. */
interface Piece {

    /** Its height with the empty space above it, pt. */
    float height(Letters letters, float width) throws IOException;

    /** Prints it from the printer's place on and moves that place below it; may go on over pages. */
    void print(Printer printer) throws IOException;

    /** Height of pieces under one another, pt. */
    static float height(List<Piece> pieces, Letters letters, float width) throws IOException {
        float height = 0;
        for (Piece piece : pieces) {
            height += piece.height(letters, width);
        }
        return height;
    }

    /** Whether the piece after it must begin on the same page. */
    default boolean leads() {
        return false;
    }
}
