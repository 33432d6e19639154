package evenfall.report.chart;

import evenfall.ingest.words.Words;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jspecify.annotations.Nullable;

/**
 * A block of training as small charts under one another on one axis of days: what was measured, what was done and what
 * the athlete felt. Panels come in the order they are added; days without a session stay empty.
 */
public final class BlockChart {

    private static final Words WORDS = Words.beside(BlockChart.class);

    private static final int TOP = 30;
    private static final int AIR = 24;
    private static final int ABOVE = 12;
    private static final int GAP = 40;
    private static final int BOTTOM = 24;
    private static final int LABELS_LEFT = 72;
    private static final int LABELS_RIGHT = 28;

    private final int width;
    private final LocalDate from;
    private final LocalDate to;
    private final List<DayPanel> panels = new ArrayList<>();

    /**
     * A chart without panels.
     *
     * @param width px
     * @param from first day
     * @param to last day, not before {@code from}
     */
    public BlockChart(int width, LocalDate from, LocalDate to) {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException(to + " lies before " + from);
        }
        this.width = width;
        this.from = from;
        this.to = to;
    }

    /** Adds a measure's median and interval in each session, and the band within which nothing has clearly changed. */
    public BlockChart medians(
            String title, Direction direction, int decimals, List<Median> medians, @Nullable Band band) {
        panels.add(new MedianPanel(title, direction.labels(WORDS, decimals), direction.isTurned(), medians, band));
        return this;
    }

    /** Adds drop heights, each filled as far as form held there, and the heights up to which form was held. */
    public BlockChart heights(String title, List<Held> heights, List<Median> formHeights) {
        panels.add(new HeightPanel(title, heights, formHeights));
        return this;
    }

    /** Adds the landings of each session by foot: left, both, right beside one another. */
    public BlockChart counts(String title, List<Count> counts) {
        panels.add(new CountPanel(title, WORDS, counts));
        return this;
    }

    /** Adds one bar a day. */
    public BlockChart bars(String title, List<Bar> bars) {
        panels.add(new BarPanel(title, bars));
        return this;
    }

    /** Adds soreness and pain from 0 to 10, of which at least one is above 0. */
    public BlockChart feelings(String title, List<Feeling> feelings) {
        panels.add(new FeelingPanel(title, WORDS, feelings));
        return this;
    }

    /** Adds words, each from its day on. */
    public BlockChart words(String title, List<Saying> sayings) {
        panels.add(new WordPanel(title, sayings));
        return this;
    }

    /** Whether nothing was added. */
    public boolean isEmpty() {
        return panels.isEmpty();
    }

    /**
     * The drawing.
     *
     * @param id starts every id inside; unique on the page
     * @param title for those who cannot see it
     */
    public Picture draw(String id, String title) {
        SvgCanvas canvas = new SvgCanvas(id, width, height());
        draw(canvas.graphics());
        return canvas.finish(title, this::draw);
    }

    private int height() {
        double panelled = panels.stream().mapToDouble(this::height).sum();
        return (int) Math.ceil(TOP + panelled + Math.max(0, panels.size() - 1) * GAP + BOTTOM);
    }

    private double height(DayPanel panel) {
        return panel.height(width - LABELS_LEFT - LABELS_RIGHT);
    }

    private void draw(Graphics2D graphics) {
        int n = panels.size();
        int height = height();
        if (n == 0) {
            return;
        }
        NumberAxis days = DayAxis.between(from, to, width - LABELS_LEFT - LABELS_RIGHT);
        CombinedDomainXYPlot whole = new CombinedDomainXYPlot(days);
        Plots.plain(whole);
        whole.setGap(GAP);
        whole.setInsets(new RectangleInsets(ABOVE, 0, 0, AIR));
        AxisSpace below = new AxisSpace();
        below.setBottom(BOTTOM);
        whole.setFixedDomainAxisSpace(below);
        for (DayPanel panel : panels) {
            panel.axis().setFixedDimension(LABELS_LEFT);
            XYPlot plot = Plots.plot(days, panel.axis());
            plot.setDomainGridlinesVisible(true);
            plot.setDomainGridlinePaint(Ink.HAIRLINE);
            plot.setDomainGridlineStroke(Ink.THIN);
            plot.setRangeGridlinesVisible(panel.ruled());
            whole.add(plot, (int) Math.round(height(panel)));
        }
        ChartRenderingInfo info = new ChartRenderingInfo();
        Plots.chart(whole)
                .draw(
                        graphics,
                        new Rectangle2D.Double(0, TOP - ABOVE, width - LABELS_RIGHT + AIR, height - TOP + ABOVE),
                        info);
        for (int p = 0; p < n; p++) {
            DayPanel panel = panels.get(p);
            Rectangle2D data = info.getPlotInfo().getSubplotInfo(p).getDataArea();
            graphics.setFont(Ink.BOLD);
            graphics.setPaint(Ink.DARK);
            graphics.drawString(panel.title(), 0, (float) data.getMinY() - 14);
            panel.draw(graphics, new Place(days, panel.axis(), data));
        }
    }

    /** Where days and values of one panel lie, px. */
    record Place(NumberAxis days, NumberAxis values, Rectangle2D area) {

        double x(LocalDate day) {
            return days.valueToJava2D(DayAxis.value(day), area, RectangleEdge.BOTTOM);
        }

        double y(double value) {
            return values.valueToJava2D(value, area, RectangleEdge.LEFT);
        }
    }

    /** What the sign of a measure means. */
    public enum Direction {
        PLAIN,
        LEFT_POSITIVE,
        RIGHT_POSITIVE,
        FORWARD_POSITIVE,
        BEFORE_POSITIVE;

        /** Left stands above right on every axis, whichever of them has the plus. */
        boolean isTurned() {
            return this == RIGHT_POSITIVE;
        }

        AxisWords labels(Words words, int decimals) {
            return switch (this) {
                case PLAIN -> AxisWords.plain(decimals);
                case LEFT_POSITIVE -> AxisWords.sided(words, "axis.left", "axis.right", decimals);
                case RIGHT_POSITIVE -> AxisWords.sided(words, "axis.right", "axis.left", decimals);
                case BEFORE_POSITIVE -> AxisWords.sided(words, "axis.before", "axis.behind", decimals);
                case FORWARD_POSITIVE -> AxisWords.sided(words, "axis.forward", "axis.backward", decimals);
            };
        }
    }

    /** A session's median with its 95 % interval, or null ends where there is none. */
    public record Median(
            LocalDate day,
            double median,
            @Nullable Double low,
            @Nullable Double high) {}

    /** Values between which nothing has clearly changed. */
    public record Band(double low, double high) {}

    /** A session's landings from one height, m: in how many form held, of how many that were judged (1 or more). */
    public record Held(LocalDate day, double heightM, int held, int judged) {}

    /** A session's landings by foot. */
    public record Count(LocalDate day, int left, int both, int right) {}

    /** One day's value, 0 or more. */
    public record Bar(LocalDate day, double value) {}

    /**
     * A feeling.
     *
     * @param sense which
     * @param size 0 to 10
     * @param region in words
     */
    public record Feeling(LocalDate day, Sense sense, int size, String region) {}

    /** The kinds of feeling the diary asks for. */
    public enum Sense {
        SORENESS,
        PAIN
    }

    /** What held from a day on. */
    public record Saying(LocalDate day, String words) {}
}
