package evenfall.report.window;

import evenfall.fusion.landing.Side;
import evenfall.report.round.BodyPart;
import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A body from the front and from the back, whose places can be pressed; the same places stand beside it by name, with keys.
 * Both are drawn as in a mirror, so that left stands left. Soreness is a ring, pain a diamond, each with its number.
 */
final class BodyDrawing extends Drawing {

    private static final long serialVersionUID = 1L;
    private static final double FIGURE = 110;
    private static final double GAP = 8;
    private static final double WIDTH = 2 * FIGURE + GAP;
    private static final double HEIGHT = 270;
    private static final double TOP = 16;
    private static final double MIDDLE = FIGURE / 2;
    private static final double SPOT = 8.5;
    /** From the middle line to the middle of a leg. */
    private static final double LEG = 15;

    private static final Shape OUTLINE = outline();
    private static final List<Spot> SPOTS = spots();

    private final transient Consumer<String> pressed;
    private transient @Nullable String part;
    private transient Map<String, Integer> soreness = Map.of();
    private transient Map<String, Integer> pain = Map.of();

    /** A place: its code, whether it is on the back, and where its middle lies on its figure. */
    private record Spot(String code, boolean back, double x, double y) {

        double left() {
            return x + (back ? FIGURE + GAP : 0);
        }
    }

    BodyDrawing(Skin skin, String name, Consumer<String> pressed) {
        super(skin, name, (int) WIDTH, (int) HEIGHT);
        this.pressed = pressed;
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                String found = at(e.getX(), e.getY());
                if (found != null) {
                    BodyDrawing.this.pressed.accept(found);
                }
            }
        });
    }

    void show(@Nullable String chosen, Map<String, Integer> sore, Map<String, Integer> hurts) {
        part = chosen;
        soreness = Map.copyOf(sore);
        pain = Map.copyOf(hurts);
        repaint();
    }

    /** The place below a point of this component, or null. */
    @Nullable String at(double x, double y) {
        String nearest = null;
        double least = 2 * SPOT;
        for (Spot spot : SPOTS) {
            double away = Math.hypot(x / scale() - spot.left(), y / scale() - spot.y());
            if (away < least) {
                least = away;
                nearest = spot.code();
            }
        }
        return nearest;
    }

    private double scale() {
        return Math.max(0.1, Math.min(getWidth() / WIDTH, getHeight() / HEIGHT));
    }

    @Override
    void draw(Graphics2D pen) {
        pen.scale(scale(), scale());
        figure(pen, 0, "body.front");
        figure(pen, FIGURE + GAP, "body.back");
        pen.setFont(pen.getFont().deriveFont(Font.BOLD, 11f));
        SPOTS.forEach(spot -> spot(pen, spot));
    }

    private void figure(Graphics2D pen, double x, String title) {
        pen.setColor(palette().quiet());
        pen.setStroke(new BasicStroke(1.4f));
        pen.draw(AffineTransform.getTranslateInstance(x, 0).createTransformedShape(OUTLINE));
        pen.setFont(pen.getFont().deriveFont(Font.PLAIN, 12f));
        pen.setColor(palette().second());
        String words = Keys.WORDS.say(title);
        pen.drawString(words, (float) (x + MIDDLE - pen.getFontMetrics().stringWidth(words) / 2.0), 11);
        pen.setFont(pen.getFont().deriveFont(Font.BOLD, 12f));
        pen.setColor(palette().letter(Side.LEFT));
        pen.drawString(Keys.WORDS.say("letter.left"), (float) x + 12, (float) HEIGHT - 24);
        pen.setColor(palette().letter(Side.RIGHT));
        pen.drawString(Keys.WORDS.say("letter.right"), (float) (x + FIGURE - 20), (float) HEIGHT - 24);
    }

    private void spot(Graphics2D pen, Spot spot) {
        boolean chosen = spot.code().equals(part);
        Integer hurts = pain.get(spot.code());
        Integer size = hurts == null ? soreness.get(spot.code()) : hurts;
        Shape shape = hurts == null ? ring(spot) : diamond(spot);
        pen.setColor(chosen ? palette().text() : palette().ground());
        pen.fill(shape);
        pen.setColor(size == null && !chosen ? palette().quiet() : palette().text());
        pen.setStroke(new BasicStroke(size == null ? 1f : 2f));
        pen.draw(shape);
        if (size != null) {
            pen.setColor(chosen ? palette().ground() : palette().text());
            String number = size.toString();
            pen.drawString(
                    number,
                    (float) (spot.left() - pen.getFontMetrics().stringWidth(number) / 2.0),
                    (float) spot.y() + 4);
        }
    }

    private static Shape ring(Spot spot) {
        return new Ellipse2D.Double(spot.left() - SPOT, spot.y() - SPOT, 2 * SPOT, 2 * SPOT);
    }

    private static Shape diamond(Spot spot) {
        double r = 1.3 * SPOT;
        Path2D path = new Path2D.Double();
        path.moveTo(spot.left() - r, spot.y());
        path.lineTo(spot.left(), spot.y() - r);
        path.lineTo(spot.left() + r, spot.y());
        path.lineTo(spot.left(), spot.y() + r);
        path.closePath();
        return path;
    }

    private static List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        pair(spots, "shoulder", false, 25, TOP + 49);
        pair(spots, "hip", false, LEG, TOP + 114);
        pair(spots, "thigh", false, LEG, TOP + 142);
        pair(spots, "knee", false, LEG, TOP + 168);
        pair(spots, "shin", false, LEG, TOP + 194);
        pair(spots, "ankle", false, LEG, TOP + 218);
        pair(spots, "foot", false, LEG + 4, TOP + 238);
        spots.add(new Spot("neck", true, MIDDLE, TOP + 33));
        spots.add(new Spot("upper back", true, MIDDLE, TOP + 62));
        spots.add(new Spot("lower back", true, MIDDLE, TOP + 98));
        pair(spots, "hamstring", true, LEG, TOP + 146);
        pair(spots, "calf", true, LEG, TOP + 192);
        return List.copyOf(spots);
    }

    private static void pair(List<Spot> spots, String name, boolean back, double away, double y) {
        spots.add(new Spot(BodyPart.left(name).code(), back, MIDDLE - away, y));
        spots.add(new Spot(BodyPart.right(name).code(), back, MIDDLE + away, y));
    }

    private static Shape outline() {
        Area area = new Area(new Ellipse2D.Double(MIDDLE - 13, TOP, 26, 29));
        limb(area, 12, MIDDLE, TOP + 24, MIDDLE, TOP + 42);
        limb(area, 18, MIDDLE - 22, TOP + 50, MIDDLE + 22, TOP + 50);
        Path2D trunk = new Path2D.Double();
        trunk.moveTo(MIDDLE - 27, TOP + 50);
        trunk.lineTo(MIDDLE + 27, TOP + 50);
        trunk.lineTo(MIDDLE + 20, TOP + 90);
        trunk.lineTo(MIDDLE + 26, TOP + 122);
        trunk.lineTo(MIDDLE - 26, TOP + 122);
        trunk.lineTo(MIDDLE - 20, TOP + 90);
        trunk.closePath();
        area.add(new Area(trunk));
        for (int side : new int[] {-1, 1}) {
            limb(area, 12, MIDDLE + side * 28, TOP + 52, MIDDLE + side * 38, TOP + 122);
            limb(area, 24, MIDDLE + side * LEG, TOP + 120, MIDDLE + side * LEG, TOP + 160);
            limb(area, 20, MIDDLE + side * LEG, TOP + 160, MIDDLE + side * LEG, TOP + 200);
            limb(area, 14, MIDDLE + side * LEG, TOP + 200, MIDDLE + side * LEG, TOP + 226);
            limb(area, 16, MIDDLE + side * LEG, TOP + 236, MIDDLE + side * (LEG + 8), TOP + 238);
        }
        return area;
    }

    private static void limb(Area area, double width, double x1, double y1, double x2, double y2) {
        area.add(new Area(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                .createStrokedShape(new Line2D.Double(x1, y1, x2, y2))));
    }
}
