package evenfall.report.chart;

import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import java.awt.Graphics2D;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * One landing as a mark of a chart that leads to it.
 *
 * @param target id of the element a press leads to
 * @param words what it is, for a pointer that rests on it and for those who cannot see it
 * @param atS moment of contact, s from the start
 * @param heightM drop height, m, or null where not known
 * @param leftOut whether it counts nowhere; drawn pale
 */
public record LandingMark(
        String target, String words, double atS, @Nullable Double heightM, Mark mark, boolean leftOut) {

    static final double RADIUS = 7;

    /** As large as a finger wants it. */
    private static final double PRESS = 24;

    /** Round the mark, and clear of the next one of a stack. */
    private static final double RING = 10;

    private static final Words WORDS = Words.beside(LandingMark.class);

    /** The mark round a point as a link, with the letter of a single foot above it where {@code lettered}. */
    Element link(SvgCanvas canvas, double x, double y, boolean lettered) {
        Element link = canvas.element("a", "href", "#" + target, "class", leftOut ? "press left-out" : "press");
        link.setAttribute("aria-label", words);
        link.appendChild(canvas.text("title", words));
        link.appendChild(canvas.element(
                "rect",
                "x",
                number(x - PRESS / 2),
                "y",
                number(y - PRESS / 2),
                "width",
                number(PRESS),
                "height",
                number(PRESS),
                "fill-opacity",
                "0"));
        link.appendChild(canvas.element("circle", "cx", number(x), "cy", number(y), "r", number(RING), "fill", "none"));
        link.appendChild(mark.draw(canvas, round(x), round(y), RADIUS));
        String letter = letter();
        if (lettered && letter != null) {
            link.appendChild(canvas.text(
                    "text",
                    letter,
                    "x",
                    number(x),
                    "y",
                    number(y - RADIUS - 4),
                    "text-anchor",
                    "middle",
                    "font-size",
                    "11",
                    "fill",
                    Ink.hex(Ink.letter(mark.side()))));
        }
        return link;
    }

    /** The mark round a point of any sheet. */
    void draw(Graphics2D graphics, double x, double y, boolean lettered) {
        mark.draw(graphics, x, y, RADIUS, leftOut ? Ink.CROWD : null);
        String letter = letter();
        if (lettered && letter != null) {
            graphics.setFont(Ink.SMALL);
            graphics.setPaint(Ink.letter(mark.side()));
            graphics.drawString(letter, (float) (x - Plots.width(Ink.SMALL, letter) / 2), (float) (y - RADIUS - 4));
        }
    }

    private @Nullable String letter() {
        Side side = mark.side();
        return side == Side.LEFT || side == Side.RIGHT ? WORDS.say("side.letter." + side.code()) : null;
    }

    private static double round(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
