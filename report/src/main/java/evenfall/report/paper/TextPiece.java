package evenfall.report.paper;

import java.io.IOException;
import java.util.List;

/** A heading or paragraph. */
record TextPiece(TextStyle style, String text) implements Piece {

    private static final float INDENT = 10;
    private static final float RULE = 2.5f;

    @Override
    public float height(Letters letters, float width) throws IOException {
        return style.above() + lines(letters, width).size() * style.line();
    }

    @Override
    public boolean leads() {
        return style.isHeading();
    }

    @Override
    public void print(Printer printer) throws IOException {
        printer.space(style.above());
        Tags.Tag tag = printer.tags().add(style.tag());
        float x = printer.x() + (style.ruled() ? INDENT : 0);
        for (String line : lines(printer.letters(), printer.width())) {
            if (printer.left() < style.line()) {
                printer.turnPage();
            }
            Sheet sheet = printer.sheet();
            float y = printer.y();
            if (style.ruled()) {
                sheet.aside(() -> sheet.bar(printer.x(), y, RULE, style.line(), style.colour()));
            }
            tag.on(sheet, () -> sheet.line(line, x, y + style.size(), style.bold(), style.size(), style.colour()));
            printer.skip(style.line());
        }
    }

    private List<String> lines(Letters letters, float width) throws IOException {
        return letters.lines(text, style.bold(), style.size(), width - (style.ruled() ? INDENT : 0));
    }
}
