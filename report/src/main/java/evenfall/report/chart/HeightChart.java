package evenfall.report.chart;

import evenfall.ingest.words.Words;
import evenfall.report.form.Form;
import evenfall.report.words.Figures;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jspecify.annotations.Nullable;

/**
 * Where form gives way: drop height from left to right, held landings above, the others below, the share held as a line
 * between them, and the height at which half are held with its interval. What was before lies behind in grey.
 */
public final class HeightChart {

    private static final Words WORDS = Words.beside(HeightChart.class);

    private static final int TOP = 22;
    private static final int AIR = 12;
    private static final int LEFT = 70;
    private static final int RIGHT = 40;
    private static final int BOTTOM = 40;
    private static final int BETWEEN = 100;
    private static final int ROW = 20;
    private static final double DOT = 3;

    private final int width;
    private final List<LandingMark> landings;
    private final Course now;
    private final Course before;
    private final NumberAxis axis;
    private final Rectangle2D data;
    private final int[] rows;
    private final double held;
    private final double notHeld;
    private final int height;

    /**
     * The landings of one time.
     *
     * @param shares by height
     * @param half the height at which half were held, m, or null
     * @param low lower end of its interval, or null
     * @param high upper end, or null
     */
    public record Course(
            List<HeldShare> shares,
            @Nullable Double half,
            @Nullable Double low,
            @Nullable Double high) {

        public Course {
            shares = List.copyOf(shares);
        }
    }

    /**
     * A chart of that width.
     *
     * @param landings those that were judged and have a height
     * @param now this session
     * @param before earlier sessions
     */
    public HeightChart(int width, List<LandingMark> landings, Course now, Course before) {
        this.width = width;
        this.landings = List.copyOf(landings);
        this.now = now;
        this.before = before;
        double highest = Math.max(
                landings.stream().mapToDouble(HeightChart::height).max().orElse(0.4),
                before.shares().stream().mapToDouble(HeldShare::heightM).max().orElse(0.4));
        double top = Math.ceil(highest * 5 + 0.4) / 5;
        axis = Plots.axis(0, top, top > 1 ? 0.4 : 0.2, AxisWords.plain(1));
        Rectangle2D across = new Rectangle2D.Double(LEFT, 0, width - LEFT - RIGHT, 1);
        double[] x = landings.stream()
                .mapToDouble(landing -> axis.valueToJava2D(height(landing), across, RectangleEdge.BOTTOM))
                .toArray();
        rows = new int[x.length];
        int above = fill(x, true);
        int below = fill(x, false);
        held = TOP + Math.max(1, above) * (double) ROW;
        notHeld = held + BETWEEN;
        height = (int) notHeld + Math.max(1, below) * ROW + BOTTOM;
        data = new Rectangle2D.Double(LEFT, TOP, across.getWidth(), height - TOP - BOTTOM);
    }

    /** Height of the drawing, px. */
    public int height() {
        return height;
    }

    /**
     * The chart for a page.
     *
     * @param id starts every id inside; unique on the page
     */
    public Picture svg(String id) {
        SvgCanvas canvas = new SvgCanvas(id, width, height);
        ground(canvas.graphics());
        for (int i = 0; i < rows.length; i++) {
            Point2D place = place(i);
            canvas.add(landings.get(i).link(canvas, place.getX(), place.getY(), false));
        }
        return canvas.finish(WORDS.say("height.title"), this::draw);
    }

    /** Draws the chart on any sheet. */
    public void draw(Graphics2D graphics) {
        ground(graphics);
        for (int i = 0; i < rows.length; i++) {
            Point2D place = place(i);
            landings.get(i).draw(graphics, place.getX(), place.getY(), false);
        }
    }

    private int fill(double[] all, boolean wanted) {
        int[] which = java.util.stream.IntStream.range(0, all.length)
                .filter(i -> isHeld(landings.get(i)) == wanted)
                .toArray();
        double[] x = new double[which.length];
        for (int k = 0; k < which.length; k++) {
            x[k] = all[which[k]];
        }
        int[] found = Swarm.rows(x, ROW);
        for (int k = 0; k < which.length; k++) {
            rows[which[k]] = found[k];
        }
        return Swarm.count(found);
    }

    private Point2D place(int i) {
        LandingMark landing = landings.get(i);
        double away = (rows[i] + 0.6) * ROW;
        return new Point2D.Double(x(height(landing)), isHeld(landing) ? held - away : notHeld + away);
    }

    private void ground(Graphics2D graphics) {
        interval(graphics);
        XYPlot plot = Plots.plot(axis, Plots.axis(0, 1, 1, AxisWords.plain(0)));
        plot.getRangeAxis().setVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setRangeZeroBaselineVisible(false);
        AxisSpace left = new AxisSpace();
        left.setLeft(LEFT);
        plot.setFixedRangeAxisSpace(left);
        AxisSpace below = new AxisSpace();
        below.setBottom(BOTTOM);
        plot.setFixedDomainAxisSpace(below);
        plot.setInsets(new RectangleInsets(AIR, 0, 0, AIR));
        Plots.chart(plot).draw(graphics, new Rectangle2D.Double(0, TOP - AIR, width - RIGHT + AIR, height - TOP + AIR));
        line(graphics, held, "share.all");
        line(graphics, (held + notHeld) / 2, "share.half");
        line(graphics, notHeld, "share.none");
        graphics.setPaint(Ink.GREY);
        graphics.drawString(WORDS.say("axis.height"), LEFT, height - 4);
        course(graphics, before, false);
        course(graphics, now, true);
    }

    private void line(Graphics2D graphics, double y, String key) {
        graphics.setPaint(Ink.HAIRLINE);
        graphics.setStroke(Ink.THIN);
        graphics.draw(new Line2D.Double(LEFT, y, data.getMaxX(), y));
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(Ink.GREY);
        graphics.drawString(WORDS.say(key), 0, (float) y + 4);
    }

    private void interval(Graphics2D graphics) {
        if (now.half() != null && now.low() != null && now.high() != null) {
            double from = x(now.low());
            graphics.setPaint(Ink.BAND);
            graphics.fill(new Rectangle2D.Double(from, held, x(now.high()) - from, notHeld - held));
        }
    }

    private void course(Graphics2D graphics, Course course, boolean leading) {
        graphics.setPaint(leading ? Ink.DARK : Ink.CROWD);
        graphics.setStroke(leading ? Ink.LEADING : Ink.SECOND);
        if (course.half() != null) {
            double x = x(course.half());
            graphics.draw(new Line2D.Double(x, held, x, notHeld));
            String words = WORDS.say(leading ? "share.now" : "share.before", Figures.fixed(course.half(), 2));
            graphics.setFont(leading ? Ink.BOLD : Ink.SMALL);
            graphics.setPaint(leading ? Ink.DARK : Ink.GREY);
            double width = Plots.width(graphics.getFont(), words);
            // The earlier height has its words on the side where this one does not stand.
            boolean toLeft = !leading && now.half() != null && course.half() <= now.half() && x - 6 - width > LEFT;
            double room = data.getMaxX() + RIGHT - width;
            double left = toLeft ? x - 6 - width : Math.min(x + 6, room);
            double y = leading ? held + 16 : notHeld - 6;
            if (leading && room < x + 6 && course.low() != null && x(course.low()) - 6 - width > LEFT) {
                // Beside the band and below the line of what was held, where nothing lies.
                left = x(course.low()) - 6 - width;
                y = (held + notHeld) / 2 + 18;
            }
            graphics.drawString(words, (float) left, (float) y);
        }
        graphics.setPaint(leading ? Ink.DARK : Ink.CROWD);
        graphics.setStroke(leading ? Ink.THIN : Ink.FAINT);
        Path2D path = new Path2D.Double();
        for (HeldShare share : course.shares()) {
            double x = x(share.heightM());
            double y = notHeld - share.share() * (notHeld - held);
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
            graphics.fill(new Ellipse2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT));
        }
        graphics.draw(path);
    }

    private double x(double heightM) {
        return axis.valueToJava2D(heightM, data, RectangleEdge.BOTTOM);
    }

    private static boolean isHeld(LandingMark landing) {
        return landing.mark().form() == Form.HELD;
    }

    private static double height(LandingMark landing) {
        return landing.heightM() == null ? 0 : landing.heightM();
    }
}
