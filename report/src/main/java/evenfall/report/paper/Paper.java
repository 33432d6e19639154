package evenfall.report.paper;

import evenfall.report.chart.Picture;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A paper in the making: what is added flows from top to bottom over A4 pages. What is added within {@link #together} stays
 * on one page if a page can hold it. The same content gives the same bytes.
 *
 * <p>Not safe for use from several threads.
 */
public final class Paper {

    private final String title;
    private final String language;
    private final List<Piece> pieces = new ArrayList<>();

    /**
     * A paper without content.
     *
     * @param title for the window's title and for those who look for the file
     * @param language of its text, such as {@code en}
     */
    public Paper(String title, String language) {
        this.title = title;
        this.language = language;
    }

    /** Adds a heading; level 1 is the paper's own. */
    public Paper heading(int level, String text) {
        pieces.add(new TextPiece(TextStyle.heading(level), text));
        return this;
    }

    /** Adds a paragraph. */
    public Paper text(TextStyle style, String text) {
        if (!text.isBlank()) {
            pieces.add(new TextPiece(style, text));
        }
        return this;
    }

    /** Adds a table. */
    public Paper table(TableText table) {
        if (!table.rows().isEmpty()) {
            pieces.add(new TablePiece(table));
        }
        return this;
    }

    /** Adds a picture. */
    public Paper picture(Picture picture) {
        return pictures(List.of(picture));
    }

    /** Adds pictures beside one another, each as wide as its own width asks. */
    public Paper pictures(List<Picture> pictures) {
        List<Picture> shown =
                pictures.stream().filter(picture -> !picture.isEmpty()).toList();
        if (!shown.isEmpty()) {
            pieces.add(new PicturePiece(shown));
        }
        return this;
    }

    /** Adds what {@code content} adds, not to be torn apart by the end of a page. */
    public Paper together(Content content) {
        List<Piece> added = added(content);
        if (!added.isEmpty()) {
            pieces.add(new Together(added));
        }
        return this;
    }

    /**
     * Adds two columns, which do not go on over the end of a page.
     *
     * @param leftShare of the width, 0 to 1
     */
    public Paper beside(double leftShare, Content left, Content right) {
        pieces.add(new Beside(added(left), added(right), (float) leftShare));
        return this;
    }

    private List<Piece> added(Content content) {
        int from = pieces.size();
        content.addTo(this);
        List<Piece> added = List.copyOf(pieces.subList(from, pieces.size()));
        pieces.subList(from, pieces.size()).clear();
        return added;
    }

    /**
     * Writes the paper as PDF; {@code out} stays open.
     *
     * @throws IOException if {@code out} fails
     */
    public void write(OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            Printer printer = new Printer(document, title, language);
            for (int i = 0; i < pieces.size(); i++) {
                printer.print(pieces.get(i), i + 1 < pieces.size() ? pieces.get(i + 1) : null);
            }
            printer.finish();
            document.save(out);
        }
    }

    /** Something that is added to a paper. */
    @FunctionalInterface
    public interface Content {
        void addTo(Paper paper);
    }
}
