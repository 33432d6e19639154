package evenfall.report.chart;

import java.awt.Graphics2D;
import java.util.function.Consumer;

/**
 * One drawing: as SVG markup that can stand inside a page, and drawn anew on paper or in a window.
 *
 * @param markup a whole {@code svg} element; well-formed, safe to insert as it is; empty where there is nothing to show
 * @param width of the drawing, px
 * @param height of the drawing, px
 * @param words what it shows, for those who cannot see it
 * @param painter draws it, from (0, 0) to its width and height
 */
public record Picture(String markup, int width, int height, String words, Consumer<Graphics2D> painter) {

    /** Nothing to show. */
    public static final Picture NONE = new Picture("", 0, 0, "", graphics -> {});

    /** Whether there is nothing to show. */
    public boolean isEmpty() {
        return markup.isEmpty();
    }
}
