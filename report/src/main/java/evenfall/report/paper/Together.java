package evenfall.report.paper;

import java.io.IOException;
import java.util.List;

/** Pieces that no end of a page tears apart. */
record Together(List<Piece> pieces) implements Piece {

    @Override
    public float height(Letters letters, float width) throws IOException {
        return Piece.height(pieces, letters, width);
    }

    @Override
    public void print(Printer printer) throws IOException {
        for (int i = 0; i < pieces.size(); i++) {
            printer.print(pieces.get(i), i + 1 < pieces.size() ? pieces.get(i + 1) : null);
        }
    }
}
