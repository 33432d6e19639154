package evenfall.report.chart;

import evenfall.report.chart.BlockChart.Bar;
import evenfall.report.chart.BlockChart.Place;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;

/** One bar a day. */
final class BarPanel extends DayPanel {

    private static final double BAR = 7;

    private final List<Bar> bars;

    BarPanel(String title, List<Bar> bars) {
        super(title, axis(bars));
        this.bars = List.copyOf(bars);
    }

    private static NumberAxis axis(List<Bar> bars) {
        double most = bars.stream().mapToDouble(Bar::value).max().orElse(1);
        double step = Plots.step(Math.max(most, 1));
        return Plots.axis(0, Math.ceil(Math.max(most, 1) / step) * step, step, AxisWords.plain(0));
    }

    @Override
    void draw(Graphics2D graphics, Place place) {
        graphics.setPaint(Ink.GREY);
        for (Bar bar : bars) {
            double top = place.y(bar.value());
            graphics.fill(new Rectangle2D.Double(place.x(bar.day()) - BAR / 2, top, BAR, place.y(0) - top));
        }
    }
}
