package evenfall.report.chart;

import evenfall.report.chart.BlockChart.Held;
import evenfall.report.chart.BlockChart.Median;
import evenfall.report.chart.BlockChart.Place;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;

/**
 * Drop heights of each session as squares, filled from below as far as form held: full all, empty none; beside them the
 * height up to which form was held, as a dot with a line as long as its interval.
 */
final class HeightPanel extends DayPanel {

    private static final double SIZE = 7;

    private static final double DOT = 2.5;

    /** As much as a step of 0.1 m needs for squares that stand apart, px. */
    private static final double STEP = SIZE + 2;

    private static final Stroke LINE = new BasicStroke(1.5f);
    private static final Stroke HALO = new BasicStroke(4f);

    private final List<Held> heights;
    private final List<Median> formHeights;

    HeightPanel(String title, List<Held> heights, List<Median> formHeights) {
        super(title, axis(heights));
        this.heights = List.copyOf(heights);
        this.formHeights = List.copyOf(formHeights);
    }

    private static NumberAxis axis(List<Held> heights) {
        double most = heights.stream().mapToDouble(Held::heightM).max().orElse(0.4);
        return Plots.axis(0, Math.max(0.4, Math.ceil(most * 5 + 0.4) / 5), 0.4, AxisWords.plain(1));
    }

    @Override
    double height(double width) {
        return Math.max(super.height(width), axis().getRange().getLength() * 10 * STEP);
    }

    @Override
    void draw(Graphics2D graphics, Place place) {
        graphics.setStroke(Ink.THIN);
        for (Held each : heights) {
            double x = place.x(each.day()) - SIZE / 2;
            double y = place.y(each.heightM()) - SIZE / 2;
            double filled = SIZE * each.held() / each.judged();
            graphics.setPaint(Color.WHITE);
            graphics.fill(new Rectangle2D.Double(x, y, SIZE, SIZE));
            graphics.setPaint(Ink.BOTH);
            if (filled > 0) {
                graphics.fill(new Rectangle2D.Double(x, y + SIZE - filled, SIZE, filled));
            }
            graphics.draw(new Rectangle2D.Double(x, y, SIZE, SIZE));
        }
        for (Median each : formHeights) {
            double x = place.x(each.day()) + SIZE + 1;
            double y = place.y(each.median());
            double low = each.low() == null ? y : place.y(each.low());
            double high = each.high() == null ? y : place.y(each.high());
            Line2D line = new Line2D.Double(x, low, x, high);
            // Where sessions stand close the next one's squares lie beneath.
            graphics.setPaint(Color.WHITE);
            graphics.setStroke(HALO);
            graphics.draw(line);
            graphics.setPaint(Ink.DARK);
            graphics.setStroke(LINE);
            graphics.draw(line);
            graphics.fill(new Ellipse2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT));
        }
    }
}
