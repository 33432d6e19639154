package evenfall.report.paper;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** A table; its head stands again on each page. */
record TablePiece(TableText table) implements Piece {

    private static final float SIZE = 8.5f;
    private static final float LINE = 11;
    private static final float PAD = 4;
    private static final float ABOVE = 6;
    private static final float HAIR = 0.5f;
    private static final Color RULE = new Color(0xBBBBBB);
    private static final Color DARK = TextStyle.PLAIN.colour();

    @Override
    public float height(Letters letters, float width) throws IOException {
        float height = ABOVE + row(letters, table.head(), true, width).height();
        for (List<String> cells : table.rows()) {
            height += row(letters, cells, false, width).height();
        }
        return height;
    }

    @Override
    public void print(Printer printer) throws IOException {
        printer.space(ABOVE);
        Tags.Tag tag = printer.tags().add(StandardStructureTypes.TABLE);
        Row head = row(printer, table.head(), true);
        head.print(printer, tag);
        for (List<String> cells : table.rows()) {
            Row row = row(printer, cells, false);
            if (row.height() > printer.left()) {
                printer.turnPage();
                head.printAgain(printer);
            }
            row.print(printer, tag);
        }
    }

    private Row row(Printer printer, List<String> cells, boolean head) throws IOException {
        return row(printer.letters(), cells, head, printer.width());
    }

    private Row row(Letters letters, List<String> cells, boolean head, float width) throws IOException {
        double sum = table.widths().stream().mapToDouble(Double::doubleValue).sum();
        List<Cell> set = new ArrayList<>();
        float x = 0;
        for (int i = 0; i < cells.size(); i++) {
            float wide = (float) (width * table.widths().get(i) / sum);
            set.add(new Cell(x, letters.lines(cells.get(i), head, SIZE, wide - PAD)));
            x += wide;
        }
        return new Row(head, set);
    }

    private record Cell(float x, List<String> lines) {}

    private record Row(boolean head, List<Cell> cells) {

        float height() {
            int most =
                    cells.stream().mapToInt(cell -> cell.lines().size()).max().orElse(0);
            return most * LINE + PAD;
        }

        void print(Printer printer, Tags.Tag table) throws IOException {
            Tags.Tag row = table.add(StandardStructureTypes.TR);
            for (int i = 0; i < cells.size(); i++) {
                Tags.Tag cell = row.add(head || i == 0 ? StandardStructureTypes.TH : StandardStructureTypes.TD);
                if (head || i == 0) {
                    cell.heads(head ? "Column" : "Row");
                }
                int at = i;
                cell.on(printer.sheet(), () -> letters(printer, cells.get(at)));
            }
            finish(printer);
        }

        /** On a later page, for the eye alone. */
        void printAgain(Printer printer) throws IOException {
            for (Cell cell : cells) {
                printer.sheet().aside(() -> letters(printer, cell));
            }
            finish(printer);
        }

        private void letters(Printer printer, Cell cell) throws IOException {
            float y = printer.y() + SIZE;
            for (String line : cell.lines()) {
                printer.sheet().line(line, printer.x() + cell.x(), y, head, SIZE, DARK);
                y += LINE;
            }
        }

        private void finish(Printer printer) throws IOException {
            printer.skip(height());
            float y = printer.y() - HAIR - 1;
            printer.sheet().aside(() -> printer.sheet().bar(printer.x(), y, printer.width(), HAIR, RULE));
        }
    }
}
