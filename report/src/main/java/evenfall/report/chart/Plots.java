package evenfall.report.chart;

import evenfall.report.words.Ties;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** Axes, plots and charts in the house's dress. Every chart begins here. */
final class Plots {

    private static final FontRenderContext LETTERS = new FontRenderContext(null, true, true);

    private Plots() {}

    /** An axis from {@code low} to {@code high} with a tick each {@code step}. */
    static NumberAxis axis(double low, double high, double step, NumberFormat labels) {
        NumberAxis axis = new NumberAxis();
        axis.setAutoRange(false);
        // A hair more, so that rounding cannot push the last tick off the end.
        axis.setRange(low, high + 1e-9 * (high - low));
        axis.setTickUnit(new NumberTickUnit(step, labels));
        axis.setTickLabelFont(Ink.SMALL);
        axis.setTickLabelPaint(Ink.GREY);
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        axis.setTickLabelInsets(new RectangleInsets(2, 2, 2, 4));
        axis.setLabelFont(Ink.SMALL);
        return axis;
    }

    /** A plot with hairlines and nothing else. */
    static XYPlot plot(NumberAxis domain, NumberAxis range) {
        XYPlot plot = new XYPlot(null, domain, range, lines());
        plain(plot);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(Ink.HAIRLINE);
        plot.setRangeGridlineStroke(Ink.THIN);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setRangeZeroBaselineVisible(true);
        plot.setRangeZeroBaselinePaint(Ink.ZERO);
        plot.setRangeZeroBaselineStroke(Ink.THIN);
        return plot;
    }

    /** Lines without shapes, each drawn as one path. */
    static XYLineAndShapeRenderer lines() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setAutoPopulateSeriesPaint(false);
        renderer.setAutoPopulateSeriesStroke(false);
        return renderer;
    }

    /** No ground, no frame. */
    static void plain(Plot plot) {
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setNoDataMessage(null);
    }

    /** A chart without title, legend or ground. */
    static JFreeChart chart(Plot plot) {
        JFreeChart chart = new JFreeChart(null, Ink.TEXT, plot, false);
        chart.setBackgroundPaint(null);
        chart.setBorderVisible(false);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        return chart;
    }

    /** A step that gives some four ticks over that span: 1, 2 or 5 times a power of ten. */
    static double step(double span) {
        double rough = span / 4;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double digits = rough / power;
        double nice = digits < 1.5 ? 1 : digits < 3 ? 2 : digits < 7.5 ? 5 : 10;
        return nice * power;
    }

    /**
     * The smallest such step with which an axis from {@code low} to {@code high} has at most so many spaces between ticks
     * that are multiples of the step.
     */
    static double step(double low, double high, int most) {
        double power = Math.pow(10, Math.floor(Math.log10((high - low) / most)));
        for (double digits : new double[] {1, 2, 5, 10, 20}) {
            double step = digits * power;
            if (Math.ceil(high / step - 1e-9) - Math.floor(low / step + 1e-9) <= most) {
                return step;
            }
        }
        return 50 * power;
    }

    /** Draws an axis alone, below what it measures. */
    static void below(NumberAxis axis, Graphics2D graphics, double y, Rectangle2D area) {
        // The axis puts back what it found, and finds nothing where no chart has drawn before.
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_DEFAULT);
        axis.draw(graphics, y, area, area, RectangleEdge.BOTTOM, null);
    }

    /** Text broken between words into lines of at most that width, px; a word that is longer is broken itself. */
    static List<String> lines(Font font, String text, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String tied : Ties.tied(text).split(" ", -1)) {
            String word = Ties.loose(tied);
            if (line.length() > 0 && width(font, line + " " + word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
            while (line.codePointCount(0, line.length()) > 1 && width(font, line.toString()) > width) {
                int end = line.offsetByCodePoints(0, 1);
                for (int next = end; width(font, line.substring(0, next)) <= width; ) {
                    end = next;
                    next = line.offsetByCodePoints(next, 1);
                }
                lines.add(line.substring(0, end));
                line.delete(0, end);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** Width of text as pages and paper set it, px; a window may round each letter. */
    static double width(Font font, String text) {
        return font.getStringBounds(text, LETTERS).getWidth();
    }
}
