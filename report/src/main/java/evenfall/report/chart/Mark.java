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
        draw(graphics, x, y, radius, paint == null ? Ink.of(side) : paint, Color.WHITE);
    }

    /** Draws the sign round a point of a sheet with another ground. */
    public void draw(Graphics2D graphics, double x, double y, double radius, Color ink, Color ground) {
        AffineTransform to = AffineTransform.getTranslateInstance(x, y);
        Shape whole = to.createTransformedShape(shape(radius, false));
        graphics.setPaint(form == Form.HELD ? ink : ground);
        graphics.fill(whole);
        graphics.setPaint(ink);
        if (form == Form.STRAINED) {
            graphics.fill(to.createTransformedShape(shape(radius, true)));
        }
        graphics.setStroke(form == null ? Ink.DASHED_SIGN : Ink.SIGN);
        graphics.draw(whole);
    }

    /** The outline round the origin, or its lower half, as a shape. */
    private Shape shape(double r, boolean half) {
        if (side == Side.LEFT) {
            return half
                    ? new Arc2D.Double(-r, -r, 2 * r, 2 * r, 180, 180, Arc2D.CHORD)
                    : new Ellipse2D.Double(-r, -r, 2 * r, 2 * r);
        }
        double[] corners = corners(r, half);
        Path2D path = new Path2D.Double();
        path.moveTo(rounded(corners[0]), rounded(corners[1]));
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(rounded(corners[i]), rounded(corners[i + 1]));
        }
        path.closePath();
        return path;
    }

    /** The same as SVG writes it. */
    private String outline(double r, boolean half) {
        if (side == Side.LEFT) {
            String arc = "A" + n(r) + " " + n(r) + " 0 0 ";
            String lower = "M" + n(-r) + " 0" + arc + "0 " + n(r) + " 0";
            return half ? lower + "Z" : lower + arc + "0 " + n(-r) + " 0Z";
        }
        return path(corners(r, half));
    }

    /** Where the corners lie of what is no circle, x and y by turns. */
    private double[] corners(double r, boolean half) {
        if (side == Side.RIGHT) {
            double w = 1.1 * r;
            double top = -1.05 * r;
            double bottom = 0.85 * r;
            double middle = (top + bottom) / 2;
            return half
                    ? new double[] {-w / 2, middle, w / 2, middle, w, bottom, -w, bottom}
                    : new double[] {0, top, w, bottom, -w, bottom};
        }
        if (side == Side.BOTH) {
            double w = 0.9 * r;
            return new double[] {-w, half ? 0 : -w, w, half ? 0 : -w, w, w, -w, w};
        }
        return half ? new double[] {-r, 0, r, 0, 0, r} : new double[] {-r, 0, 0, -r, r, 0, 0, r};
    }

    private static String path(double... xy) {
        StringBuilder d = new StringBuilder("M");
        for (int i = 0; i < xy.length; i++) {
            d.append(i > 0 ? " " : "").append(n(xy[i]));
        }
        return d.append('Z').toString();
    }

    private static double rounded(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static String n(double value) {
        double rounded = rounded(value);
        return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    }
}
