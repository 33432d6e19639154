package evenfall.fusion.accuracy;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.CategoryLabelPositions;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;

/** How the page's plots look: colours that most eyes tell apart, each with a shape of its own. */
final class PlotStyle {

    static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 11);
    static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 12);

    /** Okabe and Ito 2008, as in Wong 2011, Nature Methods 8:441. */
    private static final List<Color> COLOURS = List.of(
            new Color(0x0072B2),
            new Color(0xD55E00),
            new Color(0x009E73),
            new Color(0xCC79A7),
            new Color(0xE69F00),
            Color.BLACK,
            new Color(0x56B4E9));

    private PlotStyle() {}

    static void apply(CategoryPlot plot, LineAndShapeRenderer renderer) {
        plot.setBackgroundPaint(Color.WHITE);
        plot.setOutlinePaint(new Color(0xAAAAAA));
        plot.setRangeGridlinePaint(new Color(0xDDDDDD));
        plot.setDomainGridlinePaint(new Color(0xEEEEEE));
        plot.setDomainGridlinesVisible(true);
        for (int k = 0; k < COLOURS.size(); k++) {
            renderer.setSeriesPaint(k, COLOURS.get(k));
            renderer.setSeriesShape(k, shape(k));
            renderer.setSeriesStroke(k, new BasicStroke(1.6f));
        }
    }

    private static Shape shape(int k) {
        return switch (k % 4) {
            case 0 -> new Ellipse2D.Double(-3.5, -3.5, 7, 7);
            case 1 -> new Rectangle2D.Double(-3, -3, 6, 6);
            case 2 -> polygon(0, -4, 4, 3.5, -4, 3.5);
            default -> polygon(0, -4.5, 4.5, 0, 0, 4.5, -4.5, 0);
        };
    }

    private static Shape polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }

    static LogAxis log(String label, double least, double most) {
        LogAxis axis = new LogAxis(label);
        axis.setSmallestValue(least);
        axis.setRange(least, most);
        // one label a decade
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setNumberFormatOverride(new DecimalFormat("0.####", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        axis.setMinorTickMarksVisible(true);
        small(axis);
        return axis;
    }

    static NumberAxis percent(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setRange(0, 102);
        axis.setTickUnit(new NumberTickUnit(10));
        small(axis);
        return axis;
    }

    static CategoryAxis categories(boolean slanted) {
        CategoryAxis axis = new CategoryAxis();
        axis.setTickLabelFont(SMALL);
        axis.setMaximumCategoryLabelLines(3);
        if (slanted) {
            axis.setCategoryLabelPositions(CategoryLabelPositions.createUpRotationLabelPositions(Math.PI / 5));
        }
        return axis;
    }

    private static void small(ValueAxis axis) {
        axis.setTickLabelFont(SMALL);
        axis.setLabelFont(SMALL);
    }
}
