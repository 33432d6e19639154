package evenfall.report.chart;

import evenfall.ingest.words.Words;
import evenfall.report.chart.BlockChart.Feeling;
import evenfall.report.chart.BlockChart.Place;
import evenfall.report.chart.BlockChart.Sense;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Soreness (open circles) and pain (filled diamonds) from 0 to 10, a row for each place: what hurt most first, each row
 * named above it with its largest values. Over each mark stands its value, the largest first, as far as there is room. Zeros
 * are not drawn, nor places that never had more.
 */
final class FeelingPanel extends DayPanel {

    private static final int MOST = 10;
    private static final double RADIUS = 4;

    /** Of each row from its top, px: the place's name, the marks from 0 to 10, the figures over them; then air. */
    private static final double NAME = 15;

    private static final double MARKS = 24;
    private static final double FIGURE = 11;
    private static final double AIR = 8;
    private static final double ROW = NAME + FIGURE + RADIUS + MARKS + AIR;

    private final Words words;
    private final List<Row> rows;

    FeelingPanel(String title, Words words, List<Feeling> feelings) {
        super(title, Plots.axis(0, 1, 1, AxisWords.plain(0)));
        this.words = words;
        Map<String, List<Feeling>> places = new TreeMap<>();
        for (Feeling feeling : feelings) {
            if (feeling.size() > 0) {
                places.computeIfAbsent(feeling.region(), place -> new ArrayList<>())
                        .add(feeling);
            }
        }
        List<Row> all = new ArrayList<>();
        places.forEach((place, felt) -> {
            felt.sort((a, b) -> b.size() - a.size());
            all.add(new Row(place, felt));
        });
        all.sort((a, b) -> a.pain() == b.pain() ? b.soreness() - a.soreness() : b.pain() - a.pain());
        this.rows = all;
        axis().setTickLabelsVisible(false);
    }

    @Override
    double height(double width) {
        return rows.size() * ROW - AIR;
    }

    @Override
    boolean ruled() {
        return false;
    }

    @Override
    void draw(Graphics2D graphics, Place place) {
        double top = place.area().getMinY();
        for (Row row : rows) {
            draw(graphics, place, row, top);
            top += ROW;
        }
    }

    private void draw(Graphics2D graphics, Place place, Row row, double top) {
        double left = place.area().getMinX();
        double ground = top + ROW - AIR;
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(Ink.GREY);
        graphics.drawString(name(row), (float) left, (float) (top + NAME - 4));
        graphics.setStroke(Ink.THIN);
        graphics.setPaint(Ink.HAIRLINE);
        graphics.draw(new Line2D.Double(left, ground, place.area().getMaxX(), ground));
        List<Rectangle2D> taken = new ArrayList<>();
        for (Feeling feeling : row.felt()) {
            double x = place.x(feeling.day());
            double y = y(feeling, ground);
            mark(graphics, feeling.sense(), x, ground, y);
            taken.add(new Rectangle2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
        }
        for (Feeling feeling : row.felt()) {
            figure(graphics, feeling, place.x(feeling.day()), y(feeling, ground), taken);
        }
    }

    private static double y(Feeling feeling, double ground) {
        return ground - feeling.size() * MARKS / MOST;
    }

    private static void figure(Graphics2D graphics, Feeling feeling, double x, double y, List<Rectangle2D> taken) {
        String figure = Integer.toString(feeling.size());
        double width = Plots.width(Ink.SMALL, figure);
        double baseline = y - RADIUS - 2;
        Rectangle2D box = new Rectangle2D.Double(x - width / 2, baseline - FIGURE + 2, width, FIGURE - 2);
        if (taken.stream().noneMatch(other -> other.intersects(box))) {
            taken.add(box);
            graphics.setPaint(feeling.sense() == Sense.PAIN ? Ink.DARK : Ink.GREY);
            graphics.drawString(figure, (float) (x - width / 2), (float) baseline);
        }
    }

    private String name(Row row) {
        int pain = row.pain();
        int soreness = row.soreness();
        return pain == 0
                ? words.say("feeling.soreness", row.place(), soreness)
                : soreness == 0
                        ? words.say("feeling.pain", row.place(), pain)
                        : words.say("feeling.both", row.place(), pain, soreness);
    }

    /** On a stem, so that how large it is can be seen without an axis. */
    private static void mark(Graphics2D graphics, Sense sense, double x, double ground, double y) {
        boolean pain = sense == Sense.PAIN;
        graphics.setPaint(pain ? Ink.DARK : Ink.GREY);
        graphics.draw(new Line2D.Double(x, ground, x, pain ? y : y + RADIUS));
        if (pain) {
            graphics.fill(diamond(x, y));
        } else {
            graphics.draw(new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
        }
    }

    private static Shape diamond(double x, double y) {
        double r = RADIUS + 1;
        Path2D path = new Path2D.Double();
        path.moveTo(x - r, y);
        path.lineTo(x, y - r);
        path.lineTo(x + r, y);
        path.lineTo(x, y + r);
        path.closePath();
        return path;
    }

    /** One place with what was felt there, the largest first, never nothing. */
    private record Row(String place, List<Feeling> felt) {

        int pain() {
            return most(Sense.PAIN);
        }

        int soreness() {
            return most(Sense.SORENESS);
        }

        private int most(Sense sense) {
            return felt.stream()
                    .filter(feeling -> feeling.sense() == sense)
                    .mapToInt(Feeling::size)
                    .max()
                    .orElse(0);
        }
    }
}
