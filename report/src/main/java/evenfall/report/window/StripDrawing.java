package evenfall.report.window;

import evenfall.fusion.landing.Side;
import evenfall.report.chart.Mark;
import evenfall.report.round.LandingMark;
import evenfall.report.words.Figures;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** The landings so far from left to right, each a mark at its drop height. */
final class StripDrawing extends Drawing {

    private static final long serialVersionUID = 1L;
    private static final double RADIUS = 9;
    private static final double LEAST_SPAN_S = 120;
    private static final double LEAST_TOP_M = 0.6;

    private transient List<LandingMark> marks = List.of();
    private int chosen = -1;

    StripDrawing(Skin skin, String name) {
        super(skin, name, 300, 110);
    }

    void show(List<LandingMark> now, OptionalInt selected) {
        int at = selected.orElse(-1);
        if (!now.equals(marks) || at != chosen) {
            marks = now;
            chosen = at;
            says(Keys.WORDS.say("strip.says", now.size()));
            repaint();
        }
    }

    @Override
    void draw(Graphics2D pen) {
        double letter = pen.getFont().getSize2D();
        double left = 3 * letter;
        double right = getWidth() - 2 * RADIUS;
        double top = letter + 4;
        double floor = getHeight() - letter * 0.6;
        double highest = Math.max(
                LEAST_TOP_M,
                marks.stream()
                        .mapToDouble(mark -> mark.heightM() == null ? 0 : mark.heightM())
                        .max()
                        .orElse(0));
        pen.setFont(pen.getFont().deriveFont((float) (letter * 0.75)));
        pen.setStroke(new BasicStroke(1f));
        for (double height = 0; height <= highest + 1e-9; height += highest > 1.3 ? 0.5 : 0.3) {
            double y = floor - (floor - top) * height / highest;
            pen.setColor(palette().quiet());
            pen.drawLine((int) left, (int) y, getWidth(), (int) y);
            pen.setColor(palette().second());
            pen.drawString(Keys.WORDS.say("metres", Figures.fixed(height, 1)), 0, (float) (y + letter * 0.3));
        }
        if (marks.isEmpty()) {
            return;
        }
        double first = marks.get(0).atS();
        double span = Math.max(LEAST_SPAN_S, marks.get(marks.size() - 1).atS() - first);
        for (int i = 0; i < marks.size(); i++) {
            LandingMark mark = marks.get(i);
            double x = left + 2 * RADIUS + (right - left - 3 * RADIUS) * (mark.atS() - first) / span;
            double height = mark.heightM() == null ? 0 : mark.heightM();
            double y = floor - (floor - top) * height / highest;
            if (i == chosen) {
                pen.setColor(palette().text());
                pen.setStroke(new BasicStroke(1.5f));
                pen.drawLine((int) x, (int) top - 4, (int) x, (int) floor);
            }
            new Mark(mark.side(), mark.form())
                    .draw(
                            pen,
                            x,
                            y,
                            i == marks.size() - 1 ? RADIUS + 2 : RADIUS,
                            palette().of(mark.side()),
                            palette().ground());
            letter(pen, mark.side(), x, y - RADIUS - 5);
        }
    }

    private void letter(Graphics2D pen, @Nullable Side side, double x, double y) {
        if (side == Side.LEFT || side == Side.RIGHT) {
            String letter = Keys.WORDS.say("letter." + side.code());
            pen.setColor(palette().letter(side));
            pen.drawString(letter, (float) (x - pen.getFontMetrics().stringWidth(letter) / 2.0), (float) y);
        }
    }
}
