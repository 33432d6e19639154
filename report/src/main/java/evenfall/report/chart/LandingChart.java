package evenfall.report.chart;

import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Moments;
import evenfall.report.words.Words;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jspecify.annotations.Nullable;

/**
 * One landing as four charts over one another on one time axis round contact: acceleration, forward bend, rotation,
 * lean, with its moments marked through all of them.
 */
public final class LandingChart {

    private static final Words WORDS = Words.beside(LandingChart.class);

    private static final int WIDTH = 520;
    private static final int TOP = 66;
    private static final int AIR = 12;
    private static final int PANEL = 104;
    private static final int GAP = 38;
    private static final int BOTTOM = 40;
    private static final int LABELS_LEFT = 72;
    private static final int LABELS_RIGHT = 72;
    private static final int HEIGHT = TOP + 4 * PANEL + 3 * GAP + BOTTOM;

    private final LandingScale scale;

    /** Draws landings on {@code scale}. */
    public LandingChart(LandingScale scale) {
        this.scale = scale;
    }

    /**
     * The drawing of one landing.
     *
     * @param id starts every id inside; unique on the page
     * @param number the landing's number, for those who cannot see the drawing
     * @param moments when, on the recording's clock; those outside the time axis are left out
     */
    public Svg draw(String id, int number, LandingTrace trace, Moments moments) {
        List<Panel> panels = panels(trace);
        SvgCanvas canvas = new SvgCanvas(id, WIDTH, HEIGHT);
        Graphics2D graphics = canvas.graphics();
        CombinedDomainXYPlot whole = combine(panels, moments);
        ChartRenderingInfo info = new ChartRenderingInfo();
        Rectangle2D area = new Rectangle2D.Double(0, TOP - AIR, WIDTH - LABELS_RIGHT + AIR, HEIGHT - TOP + AIR);
        Plots.chart(whole).draw(graphics, area, info);
        for (int p = 0; p < panels.size(); p++) {
            Rectangle2D data = info.getPlotInfo().getSubplotInfo(p).getDataArea();
            Panel panel = panels.get(p);
            graphics.setFont(Ink.BOLD);
            graphics.setPaint(Ink.DARK);
            graphics.drawString(WORDS.say(panel.title()), 0, (float) data.getMinY() - 14);
            lineEnds(graphics, panel, data);
        }
        Rectangle2D top = info.getPlotInfo().getSubplotInfo(0).getDataArea();
        Rectangle2D bottom =
                info.getPlotInfo().getSubplotInfo(panels.size() - 1).getDataArea();
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(Ink.GREY);
        graphics.drawString(WORDS.say("axis.time"), LABELS_LEFT, (float) bottom.getMaxY() + 34);
        new MomentLabels(scale).draw(graphics, top, MomentLabels.of(moments));
        return canvas.finish(WORDS.say("landing.title", Integer.toString(number)));
    }

    private CombinedDomainXYPlot combine(List<Panel> panels, Moments moments) {
        NumberAxis time = Plots.axis(scale.fromS(), scale.toS(), 0.4, AxisWords.plain(1));
        CombinedDomainXYPlot whole = new CombinedDomainXYPlot(time);
        Plots.plain(whole);
        whole.setGap(GAP);
        // Room for tick labels that reach beyond the ends of their axes.
        whole.setInsets(new RectangleInsets(AIR, 0, 0, AIR));
        AxisSpace left = new AxisSpace();
        left.setLeft(LABELS_LEFT);
        AxisSpace below = new AxisSpace();
        below.setBottom(BOTTOM);
        whole.setFixedDomainAxisSpace(below);
        for (Panel panel : panels) {
            XYPlot plot = Plots.plot(time, panel.axis());
            plot.setFixedRangeAxisSpace(left);
            XYLineAndShapeRenderer renderer = Plots.lines();
            XYSeriesCollection lines = new XYSeriesCollection();
            for (int s = 0; s < panel.lines().size(); s++) {
                lines.addSeries(thinned(panel, panel.lines().get(s)));
                renderer.setSeriesPaint(s, s == 0 ? Ink.DARK : Ink.GREY);
                renderer.setSeriesStroke(s, s == 0 ? Ink.LEADING : Ink.SECOND);
            }
            plot.setDataset(lines);
            plot.setRenderer(renderer);
            for (MomentLabels.Moment moment : MomentLabels.of(moments)) {
                if (scale.shows(moment.fromContactS())) {
                    boolean contact = moment.fromContactS() == 0;
                    plot.addDomainMarker(new ValueMarker(
                            moment.fromContactS(), contact ? Ink.DARK : Ink.ZERO, contact ? Ink.THIN : Ink.MOMENT));
                }
            }
            whole.add(plot);
        }
        return whole;
    }

    private List<Panel> panels(LandingTrace trace) {
        double[] time = trace.timeS();
        return List.of(
                new Panel(
                        "panel.acceleration",
                        Plots.axis(0, scale.topG(), Plots.step(scale.topG()), AxisWords.plain(0)),
                        lines(time, "line.pelvis", trace.pelvisG(), "line.upperBack", trace.upperBackG())),
                new Panel(
                        "panel.flexion",
                        Plots.axis(
                                scale.backward(),
                                scale.forward(),
                                Plots.step(scale.forward() - scale.backward()),
                                AxisWords.sided(WORDS, "axis.forward", "axis.backward", 0)),
                        lines(time, "line.pelvis", trace.pelvicTilt(), "line.trunk", trace.trunkFlexion())),
                new Panel(
                        "panel.rotation",
                        even(scale.rotation(), "axis.left", "axis.right"),
                        lines(time, "line.pelvis", trace.pelvicRotation(), "line.twist", trace.twist())),
                new Panel(
                        "panel.lean",
                        leftUp(scale.lean()),
                        lines(time, "line.pelvis", trace.pelvicObliquity(), "line.trunk", trace.trunkLean())));
    }

    private static NumberAxis even(double reach, String above, String below) {
        return Plots.axis(-reach, reach, Plots.step(2 * reach), AxisWords.sided(WORDS, above, below, 0));
    }

    /** Lean is positive to the right; turned over, so that left is up as in the panel above it. */
    private static NumberAxis leftUp(double reach) {
        NumberAxis axis = even(reach, "axis.right", "axis.left");
        axis.setInverted(true);
        return axis;
    }

    private static List<Line> lines(
            double[] time, String first, double[] values, String second, double @Nullable [] others) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(WORDS.say(first), time, values));
        if (others != null) {
            lines.add(new Line(WORDS.say(second), time, others));
        }
        return lines;
    }

    private XYSeries thinned(Panel panel, Line line) {
        double columns = (WIDTH - LABELS_LEFT - LABELS_RIGHT) / (scale.toS() - scale.fromS());
        double pixels = PANEL / panel.axis().getRange().getLength();
        XYSeries series = new XYSeries(line.words(), false, true);
        for (int i : new Thinning(columns, pixels).keep(line.time(), line.values(), first(line), end(line))) {
            series.add(line.time()[i], Double.isFinite(line.values()[i]) ? (Double) line.values()[i] : null, false);
        }
        return series;
    }

    private int first(Line line) {
        int i = 0;
        while (i < line.time().length && line.time()[i] < scale.fromS()) {
            i++;
        }
        return i;
    }

    private int end(Line line) {
        int i = line.time().length;
        while (i > 0 && line.time()[i - 1] > scale.toS()) {
            i--;
        }
        return i;
    }

    /** Names each line at its right end, pushed apart where they would lie on one another. */
    private void lineEnds(Graphics2D graphics, Panel panel, Rectangle2D data) {
        graphics.setFont(Ink.SMALL);
        double[] y = new double[panel.lines().size()];
        for (int s = 0; s < y.length; s++) {
            Line line = panel.lines().get(s);
            int last = end(line) - 1;
            double value = last < 0 ? 0 : line.values()[last];
            y[s] = panel.axis().valueToJava2D(value, data, RectangleEdge.LEFT);
        }
        if (y.length == 2 && Math.abs(y[0] - y[1]) < 14) {
            double middle = (y[0] + y[1]) / 2;
            double up = y[0] <= y[1] ? -7 : 7;
            y[0] = middle + up;
            y[1] = middle - up;
        }
        for (int s = 0; s < y.length; s++) {
            graphics.setPaint(s == 0 ? Ink.DARK : Ink.GREY);
            graphics.drawString(panel.lines().get(s).words(), (float) data.getMaxX() + 6, (float) y[s] + 4);
        }
    }

    private record Panel(String title, NumberAxis axis, List<Line> lines) {}

    @SuppressWarnings("ArrayRecordComponent") // columns on their way to a chart
    private record Line(String words, double[] time, double[] values) {}
}
