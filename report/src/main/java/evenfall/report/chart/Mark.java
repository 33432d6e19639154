package evenfall.report.chart;

import evenfall.fusion.landing.Side;
import evenfall.report.form.Form;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * The sign that stands for one landing: shape and colour tell the foot (left a circle, right a triangle, both a square,
 * not known a diamond), the fill tells the form (held filled, strained half, lost open, not judged open and dashed).
 *
 * @param side the foot or feet, or null where not known
 * @param form the verdict, or null where not judged
 */
public record Mark(@Nullable Side side, @Nullable Form form) {

    private static final int INLINE = 16;

    /** The sign alone, for a line of text; told to nobody who cannot see it: the words beside it say the same. */
    public Svg inline() {
        SvgCanvas canvas = new SvgCanvas("mark", INLINE, INLINE);
        canvas.add(draw(canvas, INLINE / 2.0, INLINE / 2.0, INLINE / 2.0 - 2));
        return canvas.sign("mark");
    }

    /** The sign round a point. */
    Element draw(SvgCanvas canvas, double x, double y, double radius) {
        String ink = Ink.hex(Ink.of(side));
        Element sign = canvas.element(
                "g",
                "class",
                "sign",
                "stroke",
                ink,
                "stroke-width",
                "1.8",
                "transform",
                "translate(" + x + " " + y + ")");
        String outline = outline(radius, false);
        Element whole = canvas.element("path", "d", outline, "fill", form == Form.HELD ? ink : "#ffffff");
        if (form == null) {
            whole.setAttribute("stroke-dasharray", "2 2");
        }
        sign.appendChild(whole);
        if (form == Form.STRAINED) {
            sign.appendChild(canvas.element("path", "d", outline(radius, true), "fill", ink, "stroke", "none"));
        }
        return sign;
    }

    /** Draws the sign round a point of any sheet, in its own colour or, where {@code paint} is given, in that. */
    void draw(Graphics2D graphics, double x, double y, double radius, @Nullable Color paint) {
        Color ink = paint == null ? Ink.of(side) : paint;
        AffineTransform to = AffineTransform.getTranslateInstance(x, y);
        Shape whole = to.createTransformedShape(shape(radius, false));
        graphics.setPaint(form == Form.HELD ? ink : Color.WHITE);
        graphics.fill(whole);
        graphics.setPaint(ink);
        if (form == Form.STRAINED) {
            graphics.fill(to.createTransformedShape(shape(radius, true)));
        }
        graphics.setStroke(form == null ? Ink.DASHED_SIGN : Ink.SIGN);
        graphics.draw(whole);
    }

    /** The same outline as a shape. */
    private Shape shape(double r, boolean half) {
        if (side == Side.LEFT) {
            return half
                    ? new Arc2D.Double(-r, -r, 2 * r, 2 * r, 180, 180, Arc2D.CHORD)
                    : new Ellipse2D.Double(-r, -r, 2 * r, 2 * r);
        }
        // Everything else has straight edges.
        String[] numbers = outline(r, half).replace("M", "").replace("Z", "").split(" ", -1);
        Path2D path = new Path2D.Double();
        for (int i = 0; i + 1 < numbers.length; i += 2) {
            double x = Double.parseDouble(numbers[i]);
            double y = Double.parseDouble(numbers[i + 1]);
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        path.closePath();
        return path;
    }

    /** The outline round the origin, or its lower half. */
    private String outline(double r, boolean half) {
        if (side == null) {
            return half ? path(-r, 0, r, 0, 0, r) : path(-r, 0, 0, -r, r, 0, 0, r);
        }
        return switch (side) {
            case LEFT -> {
                String arc = "A" + n(r) + " " + n(r) + " 0 0 ";
                String lower = "M" + n(-r) + " 0" + arc + "0 " + n(r) + " 0";
                yield half ? lower + "Z" : lower + arc + "0 " + n(-r) + " 0Z";
            }
            case RIGHT -> {
                double w = 1.1 * r;
                double top = -1.05 * r;
                double bottom = 0.85 * r;
                double middle = (top + bottom) / 2;
                yield half
                        ? path(-w / 2, middle, w / 2, middle, w, bottom, -w, bottom)
                        : path(0, top, w, bottom, -w, bottom);
            }
            case BOTH -> {
                double w = 0.9 * r;
                yield half ? path(-w, 0, w, 0, w, w, -w, w) : path(-w, -w, w, -w, w, w, -w, w);
            }
        };
    }

    private static String path(double... xy) {
        StringBuilder d = new StringBuilder("M");
        for (int i = 0; i < xy.length; i++) {
            d.append(i > 0 ? " " : "").append(n(xy[i]));
        }
        return d.append('Z').toString();
    }

    private static String n(double value) {
        double rounded = Math.round(value * 10) / 10.0;
        return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    }
}
