package evenfall.report.paper;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import evenfall.report.chart.Typeface;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Drawings beside one another. */
record DrawingPiece(List<Drawing> drawings) implements Piece {

    private static final float ABOVE = 8;
    private static final float BETWEEN = 12;

    /** A drawing is not made larger than so many pt a pixel. */
    private static final float LARGEST = 0.75f;

    DrawingPiece {
        drawings = List.copyOf(drawings);
    }

    @Override
    public float height(Letters letters, float width) {
        float scale = scale(width);
        return ABOVE + scale * drawings.stream().mapToInt(Drawing::height).max().orElse(0);
    }

    private float scale(float width) {
        float pixels = drawings.stream().mapToInt(Drawing::width).sum();
        return Math.min(LARGEST, (width - BETWEEN * (drawings.size() - 1)) / pixels);
    }

    @Override
    public void print(Printer printer) throws IOException {
        printer.space(ABOVE);
        float scale = scale(printer.width());
        float tallest = 0;
        float x = Printer.MARGIN;
        for (Drawing drawing : drawings) {
            float height = scale * drawing.height();
            float left = x;
            float y = printer.y();
            PdfBoxGraphics2D graphics = graphics(printer, drawing);
            drawing.draw(graphics);
            graphics.dispose();
            Sheet sheet = printer.sheet();
            printer.tags()
                    .add(StandardStructureTypes.Figure)
                    .words(drawing.words())
                    .on(sheet, () -> sheet.drawing(graphics.getXFormObject(), left, y, height, scale));
            tallest = Math.max(tallest, height);
            x += scale * drawing.width() + BETWEEN;
        }
        printer.skip(tallest);
    }

    private static PdfBoxGraphics2D graphics(Printer printer, Drawing drawing) throws IOException {
        PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(printer.document(), drawing.width(), drawing.height());
        // Else letters become shapes that nobody can search or copy.
        PdfBoxGraphics2DFontTextDrawer text = new PdfBoxGraphics2DFontTextDrawer();
        text.registerFont(Typeface.REGULAR.name(), printer.letters().font(false));
        text.registerFont(Typeface.BOLD.name(), printer.letters().font(true));
        graphics.setFontTextDrawer(text);
        return graphics;
    }
}
