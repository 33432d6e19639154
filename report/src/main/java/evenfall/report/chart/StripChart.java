package evenfall.report.chart;

import evenfall.fusion.landing.Side;
import evenfall.report.words.Words;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** The session's time from left to right, each landing a mark at its drop height that leads to it. */
public final class StripChart {

    private static final Words WORDS = Words.beside(StripChart.class);

    private static final int HEIGHT = 220;
    private static final int TOP = 26;
    private static final int AIR = 12;
    private static final int LEFT = 36;
    private static final int RIGHT = 16;
    private static final int BOTTOM = 40;
    private static final double RADIUS = 7;

    /** Shorter sessions are told in seconds. */
    private static final double BRIEF_S = 180;

    private final int width;

    /** Draws strips of that width, px. */
    public StripChart(int width) {
        this.width = width;
    }

    /**
     * The strip.
     *
     * @param id starts every id inside; unique on the page
     * @param durationS length of the session, s
     */
    public Svg draw(String id, double durationS, List<Item> items) {
        double top = items.stream()
                .map(Item::heightM)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
        boolean brief = durationS < BRIEF_S;
        double unit = brief ? 1 : 60;
        double span = Math.max(durationS / unit, 1);
        double step = Math.max(Plots.step(span), 1);
        NumberAxis time = Plots.axis(0, span, step, AxisWords.plain(0));
        double highest = Math.max(0.4, Math.ceil(top * 5 + 0.4) / 5);
        NumberAxis height = Plots.axis(0, highest, highest > 0.8 ? 0.4 : 0.2, AxisWords.plain(1));
        XYPlot plot = Plots.plot(time, height);
        space(plot);
        SvgCanvas canvas = new SvgCanvas(id, width, HEIGHT);
        Graphics2D graphics = canvas.graphics();
        ChartRenderingInfo info = new ChartRenderingInfo();
        Plots.chart(plot)
                .draw(graphics, new Rectangle2D.Double(0, TOP - AIR, width - RIGHT + AIR, HEIGHT - TOP + AIR), info);
        Rectangle2D data = info.getPlotInfo().getDataArea();
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(Ink.GREY);
        graphics.drawString(WORDS.say("axis.height"), 0, 12);
        graphics.drawString(WORDS.say(brief ? "axis.seconds" : "axis.minutes"), LEFT, HEIGHT - 4);
        for (Item item : items) {
            double x = time.valueToJava2D(item.atS() / unit, data, RectangleEdge.BOTTOM);
            double y = item.heightM() == null
                    ? data.getMaxY()
                    : height.valueToJava2D(item.heightM(), data, RectangleEdge.LEFT);
            canvas.add(link(canvas, item, x, y));
        }
        return canvas.finish(WORDS.say("strip.title"));
    }

    private static void space(XYPlot plot) {
        AxisSpace sides = new AxisSpace();
        sides.setLeft(LEFT);
        plot.setFixedRangeAxisSpace(sides);
        // Room for tick labels that reach beyond the ends of their axes.
        plot.setInsets(new RectangleInsets(AIR, 0, 0, AIR));
        AxisSpace below = new AxisSpace();
        below.setBottom(BOTTOM);
        plot.setFixedDomainAxisSpace(below);
    }

    private static Element link(SvgCanvas canvas, Item item, double x, double y) {
        Element link = canvas.element("a", "href", "#" + item.target(), "class", "press");
        link.setAttribute("aria-label", item.words());
        if (item.leftOut()) {
            link.setAttribute("class", "press left-out");
        }
        link.appendChild(canvas.text("title", item.words()));
        String cx = number(x);
        String cy = number(y);
        link.appendChild(
                canvas.element("circle", "cx", cx, "cy", cy, "r", "12", "fill", "#ffffff", "fill-opacity", "0"));
        link.appendChild(item.mark().draw(canvas, round(x), round(y), RADIUS));
        Side side = item.mark().side();
        if (side == Side.LEFT || side == Side.RIGHT) {
            link.appendChild(canvas.text(
                    "text",
                    WORDS.say("side.letter." + side.code()),
                    "x",
                    cx,
                    "y",
                    number(y - RADIUS - 4),
                    "text-anchor",
                    "middle",
                    "font-size",
                    "11",
                    "fill",
                    Ink.hex(Ink.of(side))));
        }
        return link;
    }

    private static double round(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /**
     * One landing on the strip.
     *
     * @param target id of the element a press leads to
     * @param words what it is, for a pointer that rests on it and for those who cannot see it
     * @param atS moment of contact, s from the start
     * @param heightM drop height, m, or null where not known: the mark then stands on the time axis
     * @param leftOut whether it counts nowhere; drawn pale
     */
    public record Item(
            String target,
            String words,
            double atS,
            @Nullable Double heightM,
            Mark mark,
            boolean leftOut) {}
}
