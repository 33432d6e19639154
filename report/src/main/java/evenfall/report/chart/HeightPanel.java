package evenfall.report.chart;

import evenfall.report.chart.BlockChart.Held;
import evenfall.report.chart.BlockChart.Place;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;

/** Drop heights of each session as squares, filled from below as far as form held: full all, empty none. */
final class HeightPanel extends DayPanel {

    private static final double SIZE = 7;

    private final List<Held> heights;

    HeightPanel(String title, List<Held> heights) {
        super(title, axis(heights));
        this.heights = List.copyOf(heights);
    }

    private static NumberAxis axis(List<Held> heights) {
        double most = heights.stream().mapToDouble(Held::heightM).max().orElse(0.4);
        return Plots.axis(0, Math.max(0.4, Math.ceil(most * 5 + 0.4) / 5), 0.4, AxisWords.plain(1));
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
    }
}
