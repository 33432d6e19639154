package evenfall.report.paper;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import evenfall.report.chart.Picture;
import evenfall.report.chart.Typeface;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Pictures beside one another. */
record PicturePiece(List<Picture> pictures) implements Piece {

    private static final float ABOVE = 8;
    private static final float BETWEEN = 12;

    /** A picture is not made larger than so many pt a pixel. */
    private static final float LARGEST = 0.75f;

    /** As high as a picture may be to stand on one page with its heading, pt. */
    private static final float TALLEST = Sheet.HEIGHT - 2 * Printer.MARGIN - 60;

    PicturePiece {
        pictures = List.copyOf(pictures);
    }

    @Override
    public float height(Letters letters, float width) {
        float scale = scale(width);
        return ABOVE + scale * pictures.stream().mapToInt(Picture::height).max().orElse(0);
    }

    private float scale(float width) {
        float pixels = pictures.stream().mapToInt(Picture::width).sum();
        float tallest = pictures.stream().mapToInt(Picture::height).max().orElse(0);
        float fitting = Math.min((width - BETWEEN * (pictures.size() - 1)) / pixels, TALLEST / Math.max(1, tallest));
        return Math.min(LARGEST, fitting);
    }

    @Override
    public void print(Printer printer) throws IOException {
        printer.space(ABOVE);
        float scale = scale(printer.width());
        float tallest = 0;
        float x = printer.x();
        for (Picture picture : pictures) {
            float height = scale * picture.height();
            float left = x;
            float y = printer.y();
            PdfBoxGraphics2D graphics = graphics(printer, picture);
            picture.painter().accept(graphics);
            graphics.dispose();
            Sheet sheet = printer.sheet();
            printer.tags()
                    .add(StandardStructureTypes.Figure)
                    .words(picture.words())
                    .on(sheet, () -> sheet.picture(graphics.getXFormObject(), left, y, height, scale));
            tallest = Math.max(tallest, height);
            x += scale * picture.width() + BETWEEN;
        }
        printer.skip(tallest);
    }

    private static PdfBoxGraphics2D graphics(Printer printer, Picture picture) throws IOException {
        PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(printer.document(), picture.width(), picture.height());
        // Else letters become shapes that nobody can search or copy.
        PdfBoxGraphics2DFontTextDrawer text = new PdfBoxGraphics2DFontTextDrawer();
        text.registerFont(Typeface.REGULAR.name(), printer.letters().font(false));
        text.registerFont(Typeface.BOLD.name(), printer.letters().font(true));
        graphics.setFontTextDrawer(text);
        return graphics;
    }
}
