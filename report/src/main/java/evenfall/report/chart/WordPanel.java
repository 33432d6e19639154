package evenfall.report.chart;

import evenfall.report.chart.BlockChart.Place;
import evenfall.report.chart.BlockChart.Saying;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Words in force, a row each: a line from the day they begin to the day the next begin, and all of the words above it. */
final class WordPanel extends DayPanel {

    private static final double LINE = 15;
    private static final double RULE = 9;
    private static final double TICK = 4;

    private final List<Saying> sayings;

    WordPanel(String title, List<Saying> sayings) {
        super(title, Plots.axis(0, 1, 1, AxisWords.plain(0)));
        this.sayings = List.copyOf(sayings);
        axis().setTickLabelsVisible(false);
    }

    @Override
    double height(double width) {
        return sayings.stream().mapToDouble(saying -> height(saying, width)).sum();
    }

    private static double height(Saying saying, double width) {
        return Plots.lines(Ink.SMALL, saying.words(), width).size() * LINE + RULE;
    }

    @Override
    boolean ruled() {
        return false;
    }

    @Override
    void draw(Graphics2D graphics, Place place) {
        graphics.setFont(Ink.SMALL);
        double left = place.area().getMinX();
        double right = place.area().getMaxX();
        double top = place.area().getMinY();
        for (int i = 0; i < sayings.size(); i++) {
            Saying saying = sayings.get(i);
            double from = place.x(saying.day());
            LocalDate next = i + 1 < sayings.size() ? sayings.get(i + 1).day() : null;
            double bottom = top + height(saying, right - left);
            inForce(graphics, from, end(next, place), bottom - RULE / 2);
            graphics.setPaint(Ink.DARK);
            double baseline = top + LINE - 3;
            for (String line : Plots.lines(Ink.SMALL, saying.words(), right - left)) {
                // Where it is too late in the block for all of the words they end with the block.
                double start = Math.min(from, right - Plots.width(Ink.SMALL, line));
                graphics.drawString(line, (float) Math.max(left, start), (float) baseline);
                baseline += LINE;
            }
            top = bottom;
        }
    }

    private static double end(@Nullable LocalDate next, Place place) {
        return next == null ? place.area().getMaxX() : place.x(next);
    }

    private static void inForce(Graphics2D graphics, double from, double to, double y) {
        graphics.setPaint(Ink.ZERO);
        graphics.setStroke(Ink.LEADING);
        graphics.draw(new Line2D.Double(from, y, to, y));
        graphics.draw(new Line2D.Double(from, y - TICK, from, y + TICK));
    }
}
