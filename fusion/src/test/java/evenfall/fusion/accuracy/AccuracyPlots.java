package evenfall.fusion.accuracy;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.block.RectangleConstraint;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.category.DefaultCategoryDataset;

/** Draws the page's plots into a folder. */
final class AccuracyPlots {

    private static final int WIDTH = 340;
    private static final int HEIGHT = 340;
    private static final int LEGEND_HEIGHT = 30;
    private static final int IN_A_ROW = 4;

    private static final List<Figure> MOVES =
            List.of(Figure.CONTACT, Figure.SPEED, Figure.DEPTH, Figure.SHIFT_LEFT, Figure.OVER_FORWARD, Figure.CLOCK);
    private static final List<Figure> ANGLES = List.of(
            Figure.ROTATION, Figure.OBLIQUITY, Figure.TILT, Figure.FLEXION, Figure.LEAN, Figure.TWIST, Figure.SPINE);

    private final Path folder;

    AccuracyPlots(Path folder) {
        this.folder = folder;
    }

    /** How many errors lie within one and two sigma, by figure, beside how many should. */
    void coverage(String name, LandingErrors errors) throws IOException {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        for (Figure figure : Figure.values()) {
            ErrorSummary s = errors.summary(figure);
            if (!Double.isNaN(s.withinOne())) {
                data.addValue(s.withinOne(), "within 1 sigma", figure.words());
                data.addValue(s.withinTwo(), "within 2 sigma", figure.words());
            }
        }
        CategoryPlot plot = dots(data);
        plot.setRangeAxis(PlotStyle.percent("per cent of the errors; lines: 68.3 and 95.4"));
        for (double wanted : new double[] {68.3, 95.4}) {
            plot.addRangeMarker(new ValueMarker(wanted, Color.GRAY, new BasicStroke(1f)));
        }
        write(name, List.of(chart("", plot, true)), 1, 900, 620);
    }

    /** Errors of one who knows nearly everything beside the program's. */
    void floor(String name, FloorPart floor) throws IOException {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        Map<String, String> words = new LinkedHashMap<>();
        words.put("sampling", "perfect sensors");
        words.put("noise", "noise");
        words.put("strap", "soft strap");
        words.put("simulated", "simulated sessions");
        words.put("program", "the program there");
        double least = 1;
        double most = 1;
        for (Figure figure : floor.figures()) {
            Map<String, Double> steps = floor.steps(figure);
            for (Map.Entry<String, String> series : words.entrySet()) {
                double value = figure.scaled(steps.getOrDefault(series.getKey(), Double.NaN));
                if (value > 0) {
                    data.addValue(value, series.getValue(), figure.words());
                    least = Math.min(least, value);
                    most = Math.max(most, value);
                }
            }
        }
        CategoryPlot plot = dots(data);
        plot.setRangeAxis(PlotStyle.log("root mean square error", decade(least, -1), decade(most, 1)));
        write(name, List.of(chart("", plot, true)), 1, 900, 700);
    }

    /** The errors up the ladder, four faults to an image; the names of the images. */
    List<String> ladder(String name, Map<Rung, LandingErrors> ladder) throws IOException {
        Map<String, Map<String, LandingErrors>> faults = new LinkedHashMap<>();
        LandingErrors perfect = new LandingErrors();
        for (Map.Entry<Rung, LandingErrors> entry : ladder.entrySet()) {
            Rung rung = entry.getKey();
            if (rung.fault().equals(Ladder.PERFECT)) {
                perfect = entry.getValue();
            } else if (!rung.fault().equals(Ladder.EVERYTHING) && rung.ways().size() == 1) {
                faults.computeIfAbsent(rung.fault(), k -> new LinkedHashMap<>()).put(rung.level(), entry.getValue());
            }
        }
        List<String> names = new ArrayList<>();
        List<String> order = List.copyOf(faults.keySet());
        for (int from = 0; from < order.size(); from += IN_A_ROW) {
            List<String> part = order.subList(from, Math.min(order.size(), from + IN_A_ROW));
            List<JFreeChart> charts = new ArrayList<>();
            for (List<Figure> figures : List.of(MOVES, ANGLES)) {
                for (int k = 0; k < part.size(); k++) {
                    Map<String, LandingErrors> levels = new LinkedHashMap<>();
                    if (!part.get(k).equals("sample rate")) {
                        levels.put("none", perfect);
                    }
                    levels.putAll(faults.getOrDefault(part.get(k), Map.of()));
                    charts.add(climb(part.get(k), levels, figures));
                }
            }
            String image = name + "-" + (names.size() + 1);
            write(image, charts, part.size(), WIDTH * part.size(), 2 * HEIGHT);
            names.add(image);
        }
        return names;
    }

    private static JFreeChart climb(String fault, Map<String, LandingErrors> levels, List<Figure> figures) {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        boolean angles = figures.equals(ANGLES);
        double least = angles ? 0.003 : 0.01;
        levels.forEach((level, errors) -> figures.forEach(figure -> {
            double value = figure.scaled(errors.summary(figure).rms());
            data.addValue(Double.isNaN(value) ? null : Math.max(least, value), figure.briefly(), level);
        }));
        LineAndShapeRenderer renderer = new LineAndShapeRenderer(true, true);
        CategoryPlot plot = new CategoryPlot(
                data, PlotStyle.categories(true), PlotStyle.log("rms", least, angles ? 20 : 100), renderer);
        PlotStyle.apply(plot, renderer);
        return chart(fault, plot, false);
    }

    private static CategoryPlot dots(DefaultCategoryDataset data) {
        LineAndShapeRenderer renderer = new LineAndShapeRenderer(false, true);
        CategoryPlot plot = new CategoryPlot(data, PlotStyle.categories(false), PlotStyle.percent(""), renderer);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        PlotStyle.apply(plot, renderer);
        return plot;
    }

    private static double decade(double value, int way) {
        double exponent = Math.log10(value);
        return Math.pow(10, way < 0 ? Math.floor(exponent) : Math.ceil(exponent));
    }

    private static JFreeChart chart(String title, CategoryPlot plot, boolean legend) {
        JFreeChart chart = new JFreeChart(null, PlotStyle.SMALL, plot, legend);
        chart.setBackgroundPaint(Color.WHITE);
        if (!title.isEmpty()) {
            chart.setTitle(new TextTitle(title, PlotStyle.TITLE));
        }
        if (chart.getLegend() != null) {
            chart.getLegend().setItemFont(PlotStyle.SMALL);
            chart.getLegend().setPosition(RectangleEdge.BOTTOM);
            chart.getLegend().setFrame(BlockBorder.NONE);
        }
        return chart;
    }

    /** Charts row by row, all in a row with one legend below them if they bring none of their own. */
    private void write(String name, List<JFreeChart> charts, int columns, int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        double w = (double) width / columns;
        double h = height / Math.ceil((double) charts.size() / columns);
        for (int k = 0; k < charts.size(); k++) {
            int row = k / columns;
            int column = k % columns;
            JFreeChart chart = charts.get(k);
            double below = chart.getLegend() == null ? LEGEND_HEIGHT : 0;
            chart.draw(g, new Rectangle2D.Double(column * w, row * h, w, h - below));
            if (below > 0 && column == 0) {
                LegendTitle legend = new LegendTitle(chart.getPlot());
                legend.setItemFont(PlotStyle.SMALL);
                legend.arrange(g, new RectangleConstraint(width, below));
                legend.draw(g, new Rectangle2D.Double(0, (row + 1) * h - below, width, below));
            }
        }
        g.dispose();
        Files.createDirectories(folder);
        ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
    }
}
