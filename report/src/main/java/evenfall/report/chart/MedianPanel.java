package evenfall.report.chart;

import evenfall.report.chart.BlockChart.Band;
import evenfall.report.chart.BlockChart.Median;
import evenfall.report.chart.BlockChart.Place;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jspecify.annotations.Nullable;

/**
 * A measure's median in each session as a dot, its interval as a line through it, and behind them the band within which
 * nothing has clearly changed.
 */
final class MedianPanel extends DayPanel {

    private static final double RADIUS = 3.5;

    /** More would set the letters of the ticks upon each other. */
    private static final int MOST_SPACES = 5;

    private final List<Median> medians;
    private final @Nullable Band band;

    MedianPanel(String title, AxisWords labels, boolean turned, List<Median> medians, @Nullable Band band) {
        super(title, axis(labels, medians, band));
        axis().setInverted(turned);
        this.medians = List.copyOf(medians);
        this.band = band;
    }

    private static NumberAxis axis(AxisWords labels, List<Median> medians, @Nullable Band band) {
        double low = band == null ? 0 : Math.min(0, band.low());
        double high = band == null ? 0 : Math.max(0, band.high());
        for (Median each : medians) {
            low = Math.min(low, each.low() == null ? each.median() : each.low());
            high = Math.max(high, each.high() == null ? each.median() : each.high());
        }
        double step = high > low ? Plots.step(low, high, MOST_SPACES) : 1;
        return Plots.axis(Math.floor(low / step) * step, Math.max(step, Math.ceil(high / step) * step), step, labels);
    }

    @Override
    void draw(Graphics2D graphics, Place place) {
        if (band != null) {
            Rectangle2D area = place.area();
            double high = place.y(band.high());
            double low = place.y(band.low());
            graphics.setPaint(Ink.HAIRLINE);
            graphics.fill(
                    new Rectangle2D.Double(area.getX(), Math.min(high, low), area.getWidth(), Math.abs(low - high)));
        }
        graphics.setPaint(Ink.DARK);
        graphics.setStroke(Ink.LEADING);
        for (Median each : medians) {
            double x = place.x(each.day());
            double y = place.y(each.median());
            if (each.low() != null && each.high() != null) {
                graphics.draw(new Line2D.Double(x, place.y(each.low()), x, place.y(each.high())));
            }
            graphics.fill(new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
        }
    }
}
