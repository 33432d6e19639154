package evenfall.report.chart;

import java.awt.Graphics2D;
import java.util.function.Consumer;

/** A {@link Picture} of lines and words alone, written as it is drawn: each part lies over those before. */
final class SvgSheet {

    private final Markup out = new Markup();
    private final int width;
    private final int height;
    private final String title;
    private boolean open = true;

    /**
     * @param id of the drawing; unique on the page
     * @param width of the drawing, px
     * @param title tells it to those who cannot see it
     */
    SvgSheet(String id, int width, int height, String title) {
        this.width = width;
        this.height = height;
        this.title = title;
        out.raw("<svg");
        out.attribute("id", id);
        out.attribute("viewBox", "0 0 " + width + " " + height);
        out.attribute("role", "img");
        out.attribute("aria-label", title);
    }

    /** A mark on the whole drawing, for the page's script; before anything is drawn. */
    void note(String attribute, long value) {
        out.attribute(attribute, Long.toString(value));
    }

    /** An element without content; attributes as name, value pairs. */
    void element(String name, String... attributes) {
        begin();
        out.raw("<" + name);
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            out.attribute(attributes[i], attributes[i + 1]);
        }
        out.raw("/>");
    }

    /** What {@code painter} draws. */
    void drawn(Consumer<Graphics2D> painter) {
        begin();
        SvgPen pen = new SvgPen(out);
        painter.accept(pen);
        pen.dispose();
    }

    private void begin() {
        if (open) {
            out.raw(">");
            open = false;
        }
    }

    /**
     * The drawing, which is finished.
     *
     * @param painter draws the same on another sheet
     */
    Picture picture(Consumer<Graphics2D> painter) {
        begin();
        out.raw("</svg>");
        return new Picture(out.toString(), width, height, title, painter);
    }
}
