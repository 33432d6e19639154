package evenfall.report.chart;

import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Moments;
import evenfall.ingest.words.Words;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jspecify.annotations.Nullable;

/**
 * One landing as six charts over one another on one time axis round contact: acceleration, forward bend, rotation, lean,
 * height and speed of the pelvis, with its moments marked through all of them, a band for the measurement's own error,
 * and the athlete's other landings of that foot and height in grey behind.
 */
public final class LandingChart {

    /** Size of the drawing, px. */
    public static final int WIDTH = 490;

    private static final Words WORDS = Words.beside(LandingChart.class);
    private static final List<String> PANELS =
            Arrays.stream(Signal.values()).map(Signal::panel).distinct().toList();

    private static final int TOP = 66;
    private static final int AIR = 12;
    private static final int PANEL = 74;
    private static final int GAP = 36;
    private static final int BOTTOM = 40;
    private static final int LABELS_LEFT = 70;
    private static final int LABELS_RIGHT = 94;

    /** Of a line beside its name, px. */
    private static final int SAMPLE = 20;

    private static final int LAST = TOP + PANELS.size() * PANEL + (PANELS.size() - 1) * GAP;

    /** Size of the drawing, px. */
    public static final int HEIGHT = LAST + BOTTOM;

    /** A band no wider than the line it lies behind would not be seen. */
    private static final double LEAST_BAND = 1.5;

    private final LandingScale scale;
    private final Map<String, NumberAxis> axes = new LinkedHashMap<>();

    /** Draws landings on {@code scale}. */
    public LandingChart(LandingScale scale) {
        this.scale = scale;
        PANELS.forEach(panel -> axes.put(panel, scale.axis(panel)));
    }

    /**
     * Axes, grid and titles, which are the same for all landings: drawn once, to stand in an unseen drawing.
     *
     * @param id by which charts refer to it
     */
    public Svg frame(String id) {
        SvgCanvas canvas = new SvgCanvas(id, WIDTH, HEIGHT);
        frame(canvas.graphics());
        return canvas.group();
    }

    /**
     * The drawing of one landing for a page.
     *
     * @param id starts every id inside; unique on the page
     * @param number the landing's number, for those who cannot see the drawing
     * @param moments when, on the recording's clock; those outside the time axis are left out
     * @param sigma one standard deviation of a line's error after contact, in its own unit, where it is known
     * @param behind ids of what lies behind: the {@link #frame}, {@link CrowdLines}
     */
    public Picture svg(
            String id,
            int number,
            LandingTrace trace,
            Moments moments,
            Map<Signal, Double> sigma,
            List<String> behind) {
        SvgSheet sheet = new SvgSheet(id, WIDTH, HEIGHT, WORDS.say("landing.title", Integer.toString(number)));
        // Where the page's script finds a moment on the time axis.
        sheet.note("data-zero", Math.round(x(0)));
        sheet.note("data-second", Math.round(x(1) - x(0)));
        sheet.note("data-first", LABELS_LEFT);
        sheet.note("data-last", WIDTH - LABELS_RIGHT);
        sheet.note("data-from", TOP);
        sheet.note("data-to", LAST);
        Map<Signal, Path2D> lines = new EnumMap<>(Signal.class);
        for (Signal signal : Signal.values()) {
            Path2D line = path(trace, signal, Thinning.FINE);
            if (line != null) {
                lines.put(signal, line);
            }
        }
        lines.forEach((signal, line) -> {
            Path2D band = band(line, signal, sigma.getOrDefault(signal, 0.0));
            if (band != null) {
                sheet.element("path", "d", PathText.of(band), "fill", Ink.hex(Ink.BAND));
            }
        });
        behind.forEach(other -> sheet.element("use", "href", "#" + other));
        sheet.drawn(graphics -> {
            moments(graphics, trace, moments);
            lines.forEach((signal, line) -> line(graphics, signal, line));
        });
        return sheet.picture(graphics -> draw(graphics, trace, moments, sigma, List.of()));
    }

    private static void line(Graphics2D graphics, Signal signal, Path2D line) {
        graphics.setPaint(Ink.DARK);
        graphics.setStroke(leads(signal) ? Ink.LEADING : Ink.SECOND);
        graphics.draw(line);
    }

    /** Draws the same on any sheet, {@value #WIDTH} px wide, with {@code crowd} behind. */
    public void draw(
            Graphics2D graphics,
            LandingTrace trace,
            Moments moments,
            Map<Signal, Double> sigma,
            List<LandingTrace> crowd) {
        sigma.forEach((signal, size) -> {
            Path2D line = path(trace, signal, Thinning.FINE);
            Path2D band = line == null ? null : band(line, signal, size);
            if (band != null) {
                graphics.setPaint(Ink.BAND);
                graphics.fill(band);
            }
        });
        frame(graphics);
        CrowdLines lines = new CrowdLines(this);
        graphics.setPaint(Ink.CROWD);
        graphics.setStroke(Ink.FAINT);
        for (LandingTrace other : crowd) {
            lines.paths(other).forEach(graphics::draw);
        }
        moments(graphics, trace, moments);
        for (Signal signal : Signal.values()) {
            Path2D line = path(trace, signal, Thinning.FINE);
            if (line != null) {
                line(graphics, signal, line);
            }
        }
    }

    /** Whether it is the first line of its panel. */
    private static boolean leads(Signal signal) {
        return Arrays.stream(Signal.values())
                        .filter(other -> other.panel().equals(signal.panel()))
                        .findFirst()
                        .orElse(null)
                == signal;
    }

    private void frame(Graphics2D graphics) {
        Rectangle2D area = new Rectangle2D.Double(0, TOP - AIR, WIDTH - LABELS_RIGHT + AIR, HEIGHT - TOP + AIR);
        Plots.chart(panels()).draw(graphics, area);
        graphics.setFont(Ink.BOLD);
        graphics.setPaint(Ink.DARK);
        for (String panel : PANELS) {
            graphics.drawString(
                    WORDS.say("panel." + panel), 0, (float) data(panel).getMinY() - 14);
        }
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(Ink.GREY);
        graphics.drawString(WORDS.say("axis.time"), LABELS_LEFT, LAST + 34);
    }

    /** Marks the moments through all panels and names them and the lines. */
    private void moments(Graphics2D graphics, LandingTrace trace, Moments moments) {
        List<MomentLabels.Moment> all = MomentLabels.of(moments);
        for (MomentLabels.Moment moment : all) {
            if (scale.shows(moment.fromContactS())) {
                boolean contact = moment.fromContactS() == 0;
                graphics.setPaint(contact ? Ink.DARK : Ink.ZERO);
                graphics.setStroke(contact ? Ink.THIN : Ink.MOMENT);
                double x = x(moment.fromContactS());
                Path2D line = new Path2D.Double();
                for (String panel : PANELS) {
                    line.moveTo(x, data(panel).getMinY());
                    line.lineTo(x, data(panel).getMaxY());
                }
                graphics.draw(line);
            }
        }
        PANELS.forEach(panel -> lineEnds(graphics, panel, trace));
        new MomentLabels(scale).draw(graphics, data(PANELS.get(0)), all);
    }

    /** Where a panel's data lie, px. */
    Rectangle2D data(String panel) {
        double top = TOP + PANELS.indexOf(panel) * (double) (PANEL + GAP);
        return new Rectangle2D.Double(LABELS_LEFT, top, WIDTH - LABELS_LEFT - LABELS_RIGHT, PANEL);
    }

    /** Where a moment lies, px. */
    private double x(double fromContactS) {
        return LABELS_LEFT
                + (WIDTH - LABELS_LEFT - LABELS_RIGHT) * (fromContactS - scale.fromS()) / (scale.toS() - scale.fromS());
    }

    /** A line as a path over the drawing; null where it was not measured. */
    @Nullable Path2D path(LandingTrace trace, Signal signal, double tolerance) {
        double[] values = signal.of(trace);
        if (values == null) {
            return null;
        }
        NumberAxis axis = axis(signal.panel());
        Rectangle2D data = data(signal.panel());
        Path2D path = new Path2D.Double();
        boolean broken = true;
        for (int i : kept(trace, values, axis, tolerance)) {
            if (!Double.isFinite(values[i])) {
                broken = true;
                continue;
            }
            double x = x(trace.timeS()[i]);
            double y = axis.valueToJava2D(values[i], data, RectangleEdge.LEFT);
            if (broken) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
            broken = false;
        }
        return path;
    }

    private int[] kept(LandingTrace trace, double[] values, NumberAxis axis, double tolerance) {
        double columns = (WIDTH - LABELS_LEFT - LABELS_RIGHT) / (scale.toS() - scale.fromS());
        double pixels = PANEL / axis.getRange().getLength();
        return new Thinning(columns, pixels, tolerance).keep(trace.timeS(), values, first(trace), end(trace));
    }

    /** From contact on: before it, the error of what is counted from the quiet stance is smaller. Null where unseen. */
    private @Nullable Path2D band(Path2D line, Signal signal, double sigma) {
        double half = sigma * PANEL / axis(signal.panel()).getRange().getLength();
        return half > LEAST_BAND ? around(line, half, x(0)) : null;
    }

    /** What lies within {@code half} above and below a line, from {@code from} on. */
    private static Path2D around(Path2D line, double half, double from) {
        List<double[]> points = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator i = line.getPathIterator(null); !i.isDone(); i.next()) {
            i.currentSegment(at);
            if (at[0] >= from) {
                points.add(new double[] {at[0], at[1]});
            }
        }
        Path2D area = new Path2D.Double();
        for (int k = 0; k < points.size(); k++) {
            double[] point = points.get(k);
            if (k == 0) {
                area.moveTo(point[0], point[1] - half);
            } else {
                area.lineTo(point[0], point[1] - half);
            }
        }
        for (int k = points.size() - 1; k >= 0; k--) {
            area.lineTo(points.get(k)[0], points.get(k)[1] + half);
        }
        if (!points.isEmpty()) {
            area.closePath();
        }
        return area;
    }

    private CombinedDomainXYPlot panels() {
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
        for (String panel : PANELS) {
            XYPlot plot = Plots.plot(time, scale.axis(panel));
            plot.setFixedRangeAxisSpace(left);
            whole.add(plot);
        }
        return whole;
    }

    private NumberAxis axis(String panel) {
        return Objects.requireNonNull(axes.get(panel));
    }

    private static List<Signal> signals(String panel, LandingTrace trace) {
        return Arrays.stream(Signal.values())
                .filter(signal -> signal.panel().equals(panel) && signal.of(trace) != null)
                .toList();
    }

    private int first(LandingTrace trace) {
        int i = 0;
        while (i < trace.timeS().length && trace.timeS()[i] < scale.fromS()) {
            i++;
        }
        return i;
    }

    private int end(LandingTrace trace) {
        int i = trace.timeS().length;
        while (i > 0 && trace.timeS()[i - 1] > scale.toS()) {
            i--;
        }
        return i;
    }

    /** Names each line at its right end, beside a piece of it, pushed apart where they would lie on one another. */
    private void lineEnds(Graphics2D graphics, String panel, LandingTrace trace) {
        List<Signal> signals = signals(panel, trace);
        NumberAxis axis = axis(panel);
        Rectangle2D data = data(panel);
        int last = end(trace) - 1;
        List<Double> ends = new ArrayList<>();
        for (Signal signal : signals) {
            double[] values = signal.of(trace);
            double value = last < 0 || values == null || !Double.isFinite(values[last]) ? 0 : values[last];
            ends.add(axis.valueToJava2D(value, data, RectangleEdge.LEFT));
        }
        if (ends.size() == 2 && Math.abs(ends.get(0) - ends.get(1)) < 14) {
            double middle = (ends.get(0) + ends.get(1)) / 2;
            double up = ends.get(0) <= ends.get(1) ? -7 : 7;
            ends = List.of(middle + up, middle - up);
        }
        graphics.setFont(Ink.SMALL);
        for (int s = 0; s < ends.size(); s++) {
            double x = data.getMaxX() + 6;
            double y = ends.get(s);
            graphics.setPaint(Ink.DARK);
            graphics.setStroke(leads(signals.get(s)) ? Ink.LEADING : Ink.SECOND);
            graphics.draw(new Line2D.Double(x, y, x + SAMPLE, y));
            graphics.drawString(WORDS.say(signals.get(s).words()), (float) x + SAMPLE + 4, (float) y + 4);
        }
    }
}
