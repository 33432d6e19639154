package evenfall.report.chart;

import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.form.Form;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.ui.RectangleEdge;

/**
 * Left and right of one session: for each measure the landings on the left foot above those on the right, all on one
 * scale that counts away from the middle towards the foot landed on, with the median of each.
 */
public final class SidesChart {

    private static final Words WORDS = Words.beside(SidesChart.class);

    private static final int TOP = 8;
    private static final int TITLE = 24;
    private static final int ROW = 22;
    private static final int GAP = 14;
    private static final int BOTTOM = 26;
    private static final int LINE = 16;
    private static final int LEFT = 24;
    private static final int RIGHT = 32;
    private static final double RADIUS = 5;

    private final int width;
    private final List<Row> rows;
    private final NumberAxis axis;
    private final List<String> below;
    private final int height;

    /**
     * One measure.
     *
     * @param title its name
     * @param left each landing on the left foot, + towards that foot, deg
     * @param right each landing on the right foot, + towards that foot, deg
     * @param leftMedian median of {@code left}
     * @param rightMedian median of {@code right}
     */
    public record Row(String title, List<Double> left, List<Double> right, double leftMedian, double rightMedian) {

        public Row {
            left = List.copyOf(left);
            right = List.copyOf(right);
        }
    }

    /** A chart of that width, px. */
    public SidesChart(int width, List<Row> rows) {
        this.width = width;
        this.rows = List.copyOf(rows);
        double most = 5;
        for (Row row : rows) {
            for (double value : row.left()) {
                most = Math.max(most, Math.abs(value));
            }
            for (double value : row.right()) {
                most = Math.max(most, Math.abs(value));
            }
        }
        most = Math.ceil(most / 5) * 5;
        axis = Plots.axis(-most, most, most > 10 ? 10 : 5, AxisWords.sided(WORDS, "axis.towards", "axis.away", 0));
        below = Plots.lines(Ink.SMALL, WORDS.say("axis.sides"), width - LEFT);
        height = TOP + rows.size() * (TITLE + 2 * ROW + GAP) + BOTTOM + below.size() * LINE;
    }

    /** Height of the drawing, px. */
    public int height() {
        return height;
    }

    /** The chart for a page; {@code id} starts every id inside and is unique on it. */
    public Picture svg(String id) {
        SvgCanvas canvas = new SvgCanvas(id, width, height);
        draw(canvas.graphics());
        return canvas.finish(WORDS.say("sides.title"), this::draw);
    }

    /** Draws the chart on any sheet. */
    public void draw(Graphics2D graphics) {
        Rectangle2D data =
                new Rectangle2D.Double(LEFT, TOP, width - LEFT - RIGHT, height - TOP - BOTTOM - below.size() * LINE);
        double top = TOP;
        for (Row row : rows) {
            graphics.setFont(Ink.BOLD);
            graphics.setPaint(Ink.DARK);
            graphics.drawString(row.title(), 0, (float) top + 14);
            double from = top + TITLE;
            grid(graphics, data, from);
            side(graphics, data, Side.LEFT, row.left(), row.leftMedian(), from + ROW / 2.0);
            side(graphics, data, Side.RIGHT, row.right(), row.rightMedian(), from + 1.5 * ROW);
            top += TITLE + 2 * ROW + GAP;
        }
        Plots.below(axis, graphics, top - GAP, data);
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(Ink.GREY);
        for (int i = 0; i < below.size(); i++) {
            graphics.drawString(below.get(i), LEFT, height - 6 - (below.size() - 1 - i) * LINE);
        }
    }

    private void grid(Graphics2D graphics, Rectangle2D data, double from) {
        graphics.setStroke(Ink.THIN);
        double step = axis.getTickUnit().getSize();
        double most = axis.getUpperBound();
        for (double value = -Math.floor(most / step) * step; value <= most; value += step) {
            double x = axis.valueToJava2D(value, data, RectangleEdge.BOTTOM);
            graphics.setPaint(Math.abs(value) < 1e-9 ? Ink.ZERO : Ink.HAIRLINE);
            graphics.draw(new Line2D.Double(x, from, x, from + 2.0 * ROW));
        }
    }

    private void side(Graphics2D graphics, Rectangle2D data, Side side, List<Double> values, double median, double y) {
        graphics.setFont(Ink.BOLD);
        graphics.setPaint(Ink.letter(side));
        graphics.drawString(WORDS.say("side.letter." + side.code()), 0, (float) y + 5);
        graphics.setPaint(Ink.of(side));
        double x = axis.valueToJava2D(median, data, RectangleEdge.BOTTOM);
        graphics.setStroke(Ink.LEADING);
        graphics.draw(new Line2D.Double(x, y - ROW / 2.0 + 1, x, y + ROW / 2.0 - 1));
        for (double value : values) {
            double at = axis.valueToJava2D(value, data, RectangleEdge.BOTTOM);
            new Mark(side, Form.LOST).draw(graphics, at, y, RADIUS, null);
        }
    }
}
