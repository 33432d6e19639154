package evenfall.report.chart;

import evenfall.ingest.words.Words;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** The session's time from left to right, each landing a mark at its drop height that leads to it. */
public final class StripChart {

    /** Size of the drawing, px. */
    public static final int HEIGHT = 220;

    private static final Words WORDS = Words.beside(StripChart.class);

    private static final int TOP = 26;
    private static final int AIR = 12;
    private static final int LEFT = 36;
    private static final int RIGHT = 16;
    private static final int BOTTOM = 40;

    /** Shorter sessions are told in seconds. */
    private static final double BRIEF_S = 180;

    private final int width;

    /** Draws strips of that width, px. */
    public StripChart(int width) {
        this.width = width;
    }

    /**
     * The strip for a page.
     *
     * @param id starts every id inside; unique on the page
     * @param durationS length of the session, s
     */
    public Picture svg(String id, double durationS, List<LandingMark> landings) {
        SvgCanvas canvas = new SvgCanvas(id, width, HEIGHT);
        List<Point2D> places = axes(canvas.graphics(), durationS, landings);
        for (int i = 0; i < landings.size(); i++) {
            canvas.add(landings.get(i)
                    .link(canvas, places.get(i).getX(), places.get(i).getY(), true));
        }
        return canvas.finish(WORDS.say("strip.title"), graphics -> draw(graphics, durationS, landings));
    }

    /** Draws the strip on any sheet. */
    public void draw(Graphics2D graphics, double durationS, List<LandingMark> landings) {
        List<Point2D> places = axes(graphics, durationS, landings);
        for (int i = 0; i < landings.size(); i++) {
            landings.get(i).draw(graphics, places.get(i).getX(), places.get(i).getY(), true);
        }
    }

    /** Draws everything but the marks; where they lie. A landing of unknown height stands on the time axis. */
    private List<Point2D> axes(Graphics2D graphics, double durationS, List<LandingMark> landings) {
        double top = landings.stream()
                .map(LandingMark::heightM)
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
        ChartRenderingInfo info = new ChartRenderingInfo();
        Plots.chart(plot)
                .draw(graphics, new Rectangle2D.Double(0, TOP - AIR, width - RIGHT + AIR, HEIGHT - TOP + AIR), info);
        Rectangle2D data = info.getPlotInfo().getDataArea();
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(Ink.GREY);
        graphics.drawString(WORDS.say("axis.height"), 0, 12);
        graphics.drawString(WORDS.say(brief ? "axis.seconds" : "axis.minutes"), LEFT, HEIGHT - 4);
        List<Point2D> places = new ArrayList<>();
        for (LandingMark landing : landings) {
            double x = time.valueToJava2D(landing.atS() / unit, data, RectangleEdge.BOTTOM);
            Double at = landing.heightM();
            double y = at == null ? data.getMaxY() : height.valueToJava2D(at, data, RectangleEdge.LEFT);
            places.add(new Point2D.Double(x, y));
        }
        return places;
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
}
