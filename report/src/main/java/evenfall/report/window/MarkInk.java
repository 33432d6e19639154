package evenfall.report.window;

import evenfall.fusion.landing.Side;
import evenfall.report.form.Form;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/**
 * Draws the sign of a landing: left a circle, right a triangle, both a square, unknown a diamond; held filled, strained half,
 * lost open, not judged open and dashed.
 */
final class MarkInk {

    private MarkInk() {}

    static void draw(
            Graphics2D pen, Palette palette, @Nullable Side side, @Nullable Form form, double x, double y, double r) {
        Shape outline = outline(side, x, y, r);
        Color ink = palette.of(side);
        pen.setColor(palette.ground());
        pen.fill(outline);
        pen.setColor(ink);
        if (form == Form.HELD) {
            pen.fill(outline);
        } else if (form == Form.STRAINED) {
            Area half = new Area(outline);
            half.intersect(new Area(new Rectangle2D.Double(x - 2 * r, y, 4 * r, 2 * r)));
            pen.fill(half);
        }
        pen.setStroke(
                form == null
                        ? new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, new float[] {3, 3}, 0)
                        : new BasicStroke(2f));
        pen.draw(outline);
    }

    private static Shape outline(@Nullable Side side, double x, double y, double r) {
        if (side == Side.LEFT) {
            return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
        }
        if (side == Side.RIGHT) {
            return polygon(x, y - 1.1 * r, x + 1.1 * r, y + 0.9 * r, x - 1.1 * r, y + 0.9 * r);
        }
        if (side == Side.BOTH) {
            return new Rectangle2D.Double(x - 0.9 * r, y - 0.9 * r, 1.8 * r, 1.8 * r);
        }
        return polygon(x, y - 1.1 * r, x + 1.1 * r, y, x, y + 1.1 * r, x - 1.1 * r, y);
    }

    private static Shape polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }
}
