package evenfall.report.chart;

import evenfall.report.chart.BlockChart.Place;
import java.awt.Graphics2D;
import org.jfree.chart.axis.NumberAxis;

/** One panel of a chart over days: what stands above it, its own axis, and how it draws itself. */
abstract class DayPanel {

    /** What most panels take, px. */
    private static final double HIGH = 84;

    private final String title;
    private final NumberAxis axis;

    DayPanel(String title, NumberAxis axis) {
        this.title = title;
        this.axis = axis;
    }

    final String title() {
        return title;
    }

    final NumberAxis axis() {
        return axis;
    }

    /** How high it is, px, on an area of days that is so wide. */
    double height(double width) {
        return HIGH;
    }

    /** Whether it has lines at the ticks of its axis. */
    boolean ruled() {
        return true;
    }

    /** Draws the panel's marks; the axes stand already. */
    abstract void draw(Graphics2D graphics, Place place);
}
