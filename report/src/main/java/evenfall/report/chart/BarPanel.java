package evenfall.report.chart;

import evenfall.report.chart.BlockChart.Bar;
import evenfall.report.chart.BlockChart.Place;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;

/** One bar a day. */
final class BarPanel implements BlockChart.DayPanel {

    private static final double BAR = 7;

    private final String title;
    private final List<Bar> bars;
    private final NumberAxis axis;

    BarPanel(String title, List<Bar> bars) {
        this.title = title;
        this.bars = List.copyOf(bars);
        double most = bars.stream().mapToDouble(Bar::value).max().orElse(1);
        double step = Plots.step(Math.max(most, 1));
        this.axis = Plots.axis(0, Math.ceil(Math.max(most, 1) / step) * step, step, AxisWords.plain(0));
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public NumberAxis axis() {
        return axis;
    }

    @Override
    public void draw(Graphics2D graphics, Place place) {
        graphics.setPaint(Ink.GREY);
        for (Bar bar : bars) {
            double top = place.y(bar.value());
            graphics.fill(new Rectangle2D.Double(place.x(bar.day()) - BAR / 2, top, BAR, place.y(0) - top));
        }
    }
}
