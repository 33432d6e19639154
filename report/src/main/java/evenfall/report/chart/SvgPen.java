package evenfall.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/**
 * Writes lines, paths, ellipses and words straight into markup as they are drawn. A page has hundreds of small drawings of
 * nothing else; {@link SvgCanvas} serves charts with axes, at several times the cost. Every element says its own ink, in
 * colours and strokes of one kind; nothing is turned or clipped.
 */
final class SvgPen extends AbstractGraphics2D {

    /** What holds for all that is drawn: the stroke of {@link Ink#THIN} and the letters of {@link Ink#SMALL}. */
    private static final String GROUND = "<g fill=\"none\" font-size=\"12\" stroke-linecap=\"square\">";

    private final Markup out;

    /** Draws into {@code out}, from now on until {@link #dispose}. */
    SvgPen(Markup out) {
        super(false);
        this.out = out;
        gc = new GraphicContext();
        out.raw(GROUND);
    }

    @Override
    public void draw(Shape shape) {
        begin(shape);
        out.attribute("stroke", Ink.hex(getColor()));
        BasicStroke stroke = (BasicStroke) getStroke();
        if (stroke.getLineWidth() != 1) {
            out.attribute("stroke-width", number(stroke.getLineWidth()));
        }
        switch (stroke.getEndCap()) {
            case BasicStroke.CAP_BUTT -> out.attribute("stroke-linecap", "butt");
            case BasicStroke.CAP_ROUND -> out.attribute("stroke-linecap", "round");
            default -> {}
        }
        if (stroke.getLineJoin() == BasicStroke.JOIN_ROUND && !(shape instanceof Line2D)) {
            out.attribute("stroke-linejoin", "round");
        }
        float[] dashes = stroke.getDashArray();
        if (dashes != null) {
            out.attribute("stroke-dasharray", number(dashes[0]) + " " + number(dashes[1]));
        }
        out.raw("/>");
    }

    @Override
    public void fill(Shape shape) {
        begin(shape);
        out.attribute("fill", Ink.hex(getColor()));
        out.raw("/>");
    }

    private void begin(Shape shape) {
        if (shape instanceof Line2D line) {
            out.raw("<line");
            out.attribute("x1", number(line.getX1()));
            out.attribute("y1", number(line.getY1()));
            out.attribute("x2", number(line.getX2()));
            out.attribute("y2", number(line.getY2()));
        } else if (shape instanceof Ellipse2D ellipse) {
            out.raw("<ellipse");
            out.attribute("cx", number(ellipse.getCenterX()));
            out.attribute("cy", number(ellipse.getCenterY()));
            out.attribute("rx", number(ellipse.getWidth() / 2));
            out.attribute("ry", number(ellipse.getHeight() / 2));
        } else {
            out.raw("<path");
            out.attribute("d", PathText.of(shape instanceof Path2D path ? path : new Path2D.Double(shape)));
        }
    }

    @Override
    public void drawString(String words, float x, float y) {
        out.raw("<text");
        out.attribute("x", number(x));
        out.attribute("y", number(y));
        out.attribute("fill", Ink.hex(getColor()));
        Font font = getFont();
        if (font.getSize2D() != Ink.SMALL.getSize2D()) {
            out.attribute("font-size", number(font.getSize2D()));
        }
        if (font.isBold()) {
            out.attribute("font-weight", "bold");
        }
        out.raw(">");
        out.text(words);
        out.raw("</text>");
    }

    private static String number(double value) {
        StringBuilder text = new StringBuilder();
        PathText.tenths(text, Math.round(value * 10));
        return text.toString();
    }

    @Override
    public void dispose() {
        out.raw("</g>");
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        throw notNeeded();
    }

    @Override
    public Graphics create() {
        throw notNeeded();
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        throw notNeeded();
    }

    @Override
    public void drawString(AttributedCharacterIterator words, float x, float y) {
        throw notNeeded();
    }

    @Override
    public void setXORMode(Color colour) {
        throw notNeeded();
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw notNeeded();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw notNeeded();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw notNeeded();
    }

    @Override
    public void drawImage(BufferedImage image, BufferedImageOp change, int x, int y) {
        throw notNeeded();
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform place) {
        throw notNeeded();
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform place) {
        throw notNeeded();
    }

    private static UnsupportedOperationException notNeeded() {
        return new UnsupportedOperationException("drawn on an SvgCanvas");
    }
}
