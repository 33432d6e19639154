package evenfall.report.paper;

import java.io.IOException;
import java.util.List;

/** Two columns, which begin at one height and do not go on over the end of a page. */
record Beside(List<Piece> left, List<Piece> right, float leftShare) implements Piece {

    private static final float BETWEEN = 14;

    @Override
    public float height(Letters letters, float width) throws IOException {
        float room = width - BETWEEN;
        return Math.max(
                Piece.height(left, letters, leftShare * room), Piece.height(right, letters, (1 - leftShare) * room));
    }

    @Override
    public void print(Printer printer) throws IOException {
        float room = printer.width() - BETWEEN;
        float wide = leftShare * room;
        float top = printer.y();
        float leftEnd = printer.column(0, wide, top, left);
        float rightEnd = printer.column(wide + BETWEEN, room - wide, top, right);
        printer.skip(Math.max(leftEnd, rightEnd) - top);
    }
}
