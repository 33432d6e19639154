package evenfall.report.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.jspecify.annotations.Nullable;

/** Prints pieces under one another and turns the page where one no longer fits. */
final class Printer {

    /** At each side of a page, pt. */
    static final float MARGIN = 48;

    private static final float FOOT = 28;
    private static final float FOOT_SIZE = 8;

    private final PDDocument document;
    private final String title;
    private final Letters letters;
    private final Tags tags;
    private final List<Sheet> sheets = new ArrayList<>();
    private float x = MARGIN;
    private float width = Sheet.WIDTH - 2 * MARGIN;
    private float y;

    Printer(PDDocument document, String title, String language) throws IOException {
        this.document = document;
        this.title = title;
        this.letters = new Letters(document);
        this.tags = new Tags(document);
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(title);
        about.setCreator("Evenfall");
        document.setDocumentInformation(about);
        document.getDocumentCatalog().setLanguage(language);
        PDViewerPreferences shown =
                new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
        shown.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(shown);
        // Else two runs give other bytes.
        document.setDocumentId(0L);
        turnPage();
    }

    Letters letters() {
        return letters;
    }

    Tags tags() {
        return tags;
    }

    PDDocument document() {
        return document;
    }

    /** The page that is printed on. */
    Sheet sheet() {
        return sheets.get(sheets.size() - 1);
    }

    /** Where the next piece begins, pt from the top of the page. */
    float y() {
        return y;
    }

    /** Left side of the column that is printed in, pt. */
    float x() {
        return x;
    }

    /** Width of the column that is printed in, pt. */
    float width() {
        return width;
    }

    /**
     * Prints in a narrower column of this page and leaves the place of the next piece where it was.
     *
     * @param from left side of the column, from this column's own
     * @return where the column ends, pt from the top of the page
     */
    float column(float from, float wide, float top, List<Piece> pieces) throws IOException {
        float outerX = x;
        float outerWidth = width;
        x += from;
        width = wide;
        y = top;
        for (Piece piece : pieces) {
            piece.print(this);
        }
        float end = y;
        x = outerX;
        width = outerWidth;
        y = top;
        return end;
    }

    /** Height that is left on the page, pt. */
    float left() {
        return Sheet.HEIGHT - MARGIN - y;
    }

    /** Leaves space, but none at the top of a page. */
    void space(float height) {
        y += y > MARGIN ? height : 0;
    }

    /** Goes down. */
    void skip(float height) {
        y += height;
    }

    void turnPage() throws IOException {
        sheets.add(new Sheet(document, letters, sheets.size()));
        y = MARGIN;
    }

    /** Prints a piece, on a new page if it fits there and not here; {@code next} must begin where a heading ends. */
    void print(Piece piece, @Nullable Piece next) throws IOException {
        float height = piece.height(letters, width);
        float whole = Sheet.HEIGHT - 2 * MARGIN;
        if (piece.leads() && next != null) {
            float follows = next.height(letters, width);
            // What fits on a page goes to the next one as a whole, and its heading with it.
            height += follows + height <= whole ? follows : 4 * MARGIN;
        }
        boolean fresh = y <= MARGIN;
        if (!fresh && height > left() && height <= whole) {
            turnPage();
        }
        piece.print(this);
    }

    /** Numbers the pages and ties up the tags; after the last piece. */
    void finish() throws IOException {
        for (int i = 0; i < sheets.size(); i++) {
            Sheet sheet = sheets.get(i);
            String number = i + 1 + " / " + sheets.size();
            float wide = letters.width(number, false, FOOT_SIZE);
            sheet.aside(() -> {
                sheet.line(
                        letters.known(title), MARGIN, Sheet.HEIGHT - FOOT, false, FOOT_SIZE, TextStyle.QUIET.colour());
                sheet.line(
                        number,
                        Sheet.WIDTH - MARGIN - wide,
                        Sheet.HEIGHT - FOOT,
                        false,
                        FOOT_SIZE,
                        TextStyle.QUIET.colour());
            });
            sheet.close();
        }
        tags.finish(sheets);
    }
}
