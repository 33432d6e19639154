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
import org.jspecify.annotations.Nullable;

/**
 * Left against right over a block: for each measure the medians of both feet as a pair of dots on one scale, and beside it
 * their difference with its interval, the zero line and the band of the measurement's own error. Greater on the left lies
 * left of zero.
 */
public final class DifferenceChart {

    private static final Words WORDS = Words.beside(DifferenceChart.class);

    private static final int LINE = 16;
    private static final int ABOVE = 8;
    private static final int TITLE = 22;
    private static final int ROW = 30;
    private static final int BOTTOM = 42;
    private static final int EDGE = 24;

    /** Between the two scales, so that their words do not run together, px. */
    private static final int GAP = 28;

    private static final double PAIR_SHARE = 0.5;
    private static final double RADIUS = 6;
    private static final double LEAST = 2;

    /** Room for the words of a tick, px. */
    private static final double TICK = 62;

    private final int width;
    private final List<Row> rows;
    private final NumberAxis sizes;
    private final NumberAxis differences;
    private final List<String> pairHead;
    private final List<String> apartHead;
    private final int top;

    /**
     * One measure.
     *
     * @param title its name
     * @param left median of landings on the left foot, + towards that foot, deg
     * @param right median of landings on the right foot, + towards that foot, deg
     * @param difference left less right, deg
     * @param low lower end of its interval
     * @param high upper end
     * @param error differences up to this may be the measurement's own error, or null where it is not known
     */
    public record Row(
            String title,
            double left,
            double right,
            double difference,
            double low,
            double high,
            @Nullable Double error) {}

    /** A chart of that width, px. */
    public DifferenceChart(int width, List<Row> rows) {
        this.width = width;
        this.rows = List.copyOf(rows);
        double most = LEAST;
        double widest = LEAST;
        for (Row row : rows) {
            most = Math.max(most, Math.max(Math.abs(row.left()), Math.abs(row.right())));
            widest = Math.max(widest, Math.max(Math.abs(row.low()), Math.abs(row.high())));
            widest = Math.max(widest, row.error() == null ? 0 : row.error());
        }
        double half = PAIR_SHARE * width;
        sizes = axis(most, half - GAP - 2 * EDGE, "axis.towards", "axis.away");
        differences = axis(widest, half - GAP - 2 * EDGE, "axis.left", "axis.right");
        differences.setInverted(true);
        pairHead = Plots.lines(Ink.SMALL, WORDS.say("difference.pair"), half - GAP);
        apartHead = Plots.lines(Ink.SMALL, WORDS.say("difference.apart"), half - GAP);
        top = ABOVE + LINE * Math.max(pairHead.size(), apartHead.size());
    }

    private static NumberAxis axis(double most, double room, String plus, String minus) {
        int halves = (int) Math.max(1, Math.min(4, Math.floor(room / TICK / 2)));
        double step = Plots.step(0, most, halves);
        double end = Math.ceil(most / step - 1e-9) * step;
        return Plots.axis(-end, end, step, AxisWords.sided(WORDS, plus, minus, step < 1 ? 1 : 0));
    }

    private int height() {
        return top + rows.size() * (TITLE + ROW) + BOTTOM;
    }

    /** The chart for a page; {@code id} starts every id inside and is unique on it. */
    public Picture picture(String id) {
        SvgCanvas canvas = new SvgCanvas(id, width, height());
        draw(canvas.graphics());
        return canvas.finish(WORDS.say("difference.title"), this::draw);
    }

    private void draw(Graphics2D graphics) {
        double middle = PAIR_SHARE * width;
        int bottom = height() - BOTTOM;
        Rectangle2D pair = new Rectangle2D.Double(EDGE, top, middle - GAP - 2 * EDGE, bottom - top);
        Rectangle2D apart =
                new Rectangle2D.Double(middle + GAP + EDGE, top, width - middle - GAP - 2 * EDGE, bottom - top);
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(Ink.GREY);
        head(graphics, pairHead, 0);
        head(graphics, apartHead, middle + GAP);
        double y = top;
        for (Row row : rows) {
            graphics.setFont(Ink.BOLD);
            graphics.setPaint(Ink.DARK);
            graphics.drawString(row.title(), 0, (float) y + 14);
            y += TITLE;
            pair(graphics, row, pair, y);
            apart(graphics, row, apart, y);
            y += ROW;
        }
        Plots.below(sizes, graphics, bottom, pair);
        Plots.below(differences, graphics, bottom, apart);
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(Ink.GREY);
        graphics.drawString(WORDS.say("difference.degrees"), EDGE, height() - 6);
    }

    private static void head(Graphics2D graphics, List<String> lines, double x) {
        for (int i = 0; i < lines.size(); i++) {
            graphics.drawString(lines.get(i), (float) x, 12 + i * LINE);
        }
    }

    private void pair(Graphics2D graphics, Row row, Rectangle2D area, double y) {
        zero(graphics, sizes, area, y);
        double middle = y + ROW / 2.0;
        double left = x(sizes, row.left(), area);
        double right = x(sizes, row.right(), area);
        graphics.setPaint(Ink.GREY);
        graphics.setStroke(Ink.THIN);
        graphics.draw(new Line2D.Double(left, middle, right, middle));
        // The letters lie outside, so that close dots leave them readable.
        letter(graphics, Side.LEFT, left + (left <= right ? -18 : 10), middle);
        letter(graphics, Side.RIGHT, right + (left <= right ? 10 : -18), middle);
        new Mark(Side.RIGHT, Form.HELD).draw(graphics, right, middle, RADIUS, null);
        new Mark(Side.LEFT, Form.HELD).draw(graphics, left, middle, RADIUS, null);
    }

    private static void letter(Graphics2D graphics, Side side, double x, double y) {
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(Ink.letter(side));
        graphics.drawString(WORDS.say("side.letter." + side.code()), (float) x, (float) y + 4);
    }

    private void apart(Graphics2D graphics, Row row, Rectangle2D area, double y) {
        Double error = row.error();
        if (error != null) {
            double from = x(differences, error, area);
            double to = x(differences, -error, area);
            graphics.setPaint(Ink.HAIRLINE);
            graphics.fill(new Rectangle2D.Double(Math.min(from, to), y + 2, Math.abs(to - from), ROW - 4));
        }
        zero(graphics, differences, area, y);
        double middle = y + ROW / 2.0;
        graphics.setPaint(Ink.DARK);
        graphics.setStroke(Ink.LEADING);
        graphics.draw(
                new Line2D.Double(x(differences, row.low(), area), middle, x(differences, row.high(), area), middle));
        new Mark(Side.BOTH, Form.HELD).draw(graphics, x(differences, row.difference(), area), middle, RADIUS - 1, null);
    }

    private static void zero(Graphics2D graphics, NumberAxis axis, Rectangle2D area, double y) {
        double x = x(axis, 0, area);
        graphics.setPaint(Ink.ZERO);
        graphics.setStroke(Ink.THIN);
        graphics.draw(new Line2D.Double(x, y, x, y + ROW));
    }

    private static double x(NumberAxis axis, double value, Rectangle2D area) {
        return axis.valueToJava2D(value, area, RectangleEdge.BOTTOM);
    }
}
