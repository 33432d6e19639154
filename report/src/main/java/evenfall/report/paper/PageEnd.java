package evenfall.report.paper;

import java.io.IOException;

/** Nothing more on this page. */
record PageEnd() implements Piece {

    @Override
    public float height(Letters letters, float width) {
        return 0;
    }

    @Override
    public void print(Printer printer) throws IOException {
        printer.turnPage();
    }
}
