package evenfall.report.window;

import evenfall.fusion.analysis.Level;
import evenfall.report.round.SensorGlance;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;

/** How pelvis and upper back stand now: from behind each a line that leans as it leans, from the side as it bends. */
final class LevelDrawing extends Drawing {

    private static final long serialVersionUID = 1L;

    private transient @Nullable Level pelvis;
    private transient @Nullable Level upperBack;
    private transient DoubleConsumer painted = timeS -> {};

    LevelDrawing(Skin skin) {
        super(skin, "level", 320, 220);
    }

    /** Told after each painting which moment it showed, s on the pelvis's clock. */
    void onPainted(DoubleConsumer listener) {
        painted = listener;
    }

    void show(SensorGlance pelvisNow, SensorGlance upperBackNow) {
        Level lower = pelvisNow.level();
        if (lower == null ? pelvis != null : !lower.equals(pelvis)) {
            pelvis = lower;
            upperBack = upperBackNow.level();
            says(lower == null ? Keys.WORDS.say("level.nothing") : words(lower, upperBack));
            repaint();
        }
    }

    @Override
    void draw(Graphics2D pen) {
        double half = getWidth() / 2.0;
        int letter = pen.getFont().getSize();
        double low = getHeight() * 0.66;
        double high = getHeight() * 0.3;
        pen.setColor(palette().second());
        pen.drawString(Keys.WORDS.say("level.behind"), 4, letter);
        pen.drawString(Keys.WORDS.say("level.side"), (int) half + 4, letter);
        quiet(pen, half * 0.5, low, high);
        quiet(pen, half * 1.5, low, high);
        Level lower = pelvis;
        if (lower == null) {
            return;
        }
        Level upper = upperBack;
        double size = Math.min(half * 0.32, getHeight() * 0.3);
        pen.setColor(palette().text());
        pen.setStroke(new BasicStroke(5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        across(pen, half * 0.5, low, size, lower.leanDeg());
        up(pen, half * 1.5, low, size * 0.6, lower.flexionDeg());
        if (upper != null) {
            across(pen, half * 0.5, high, size * 1.15, upper.leanDeg());
            up(pen, half * 1.5, high, size * 0.6, upper.flexionDeg());
        }
        pen.setColor(palette().text());
        // A line each: both in one would run out of a narrow window.
        int foot = getHeight() - 6;
        pen.drawString(
                words(lower, null),
                4,
                upper == null ? foot : foot - pen.getFontMetrics().getHeight());
        if (upper != null) {
            pen.drawString(Keys.WORDS.say("level.says.above", lean(upper), bend(upper)), 4, foot);
        }
        painted.accept(lower.timeS());
    }

    private void quiet(Graphics2D pen, double x, double low, double high) {
        pen.setColor(palette().quiet());
        pen.setStroke(new BasicStroke(1f));
        pen.draw(new Line2D.Double(x - 60, low, x + 60, low));
        pen.draw(new Line2D.Double(x - 60, high, x + 60, high));
        pen.draw(new Line2D.Double(x, high - 24, x, low + 24));
    }

    /** From behind: leaning right lowers the right end. */
    private static void across(Graphics2D pen, double x, double y, double size, double leanDeg) {
        double dx = size * Math.cos(Math.toRadians(leanDeg));
        double dy = size * Math.sin(Math.toRadians(leanDeg));
        pen.draw(new Line2D.Double(x - dx, y - dy, x + dx, y + dy));
    }

    /** From the side, looking right: bending forward tips the upper end to the right. */
    private static void up(Graphics2D pen, double x, double y, double size, double flexionDeg) {
        double dx = size * Math.sin(Math.toRadians(flexionDeg));
        double dy = size * Math.cos(Math.toRadians(flexionDeg));
        pen.draw(new Line2D.Double(x - dx * 0.4, y + dy * 0.4, x + dx * 0.6, y - dy * 0.6));
    }

    static String words(Level lower, @Nullable Level upper) {
        String below = Keys.WORDS.say("level.says", lean(lower), bend(lower));
        return upper == null ? below : below + " " + Keys.WORDS.say("level.says.above", lean(upper), bend(upper));
    }

    private static String lean(Level level) {
        return degrees(level.leanDeg(), "level.right", "level.left", "level.level");
    }

    private static String bend(Level level) {
        return degrees(level.flexionDeg(), "level.forward", "level.back", "level.upright");
    }

    private static String degrees(double value, String plus, String minus, String none) {
        long size = Math.round(Math.abs(value));
        return size == 0 ? Keys.WORDS.say(none) : Keys.WORDS.say(value > 0 ? plus : minus, size);
    }
}
