package evenfall.report.chart;

import evenfall.report.chart.BlockChart.Feeling;
import evenfall.report.chart.BlockChart.Place;
import evenfall.report.chart.BlockChart.Sense;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Soreness (open circles) and pain (filled diamonds) from 0 to 10; zeros are not drawn. Regions are named beside the
 * marks, pain first, then the strongest soreness, as far as there is room.
 */
final class FeelingPanel extends DayPanel {

    private static final int MOST = 10;
    private static final double RADIUS = 4;
    private static final int WORTH_A_NAME = 3;

    private final List<Feeling> feelings;

    FeelingPanel(String title, List<Feeling> feelings) {
        super(title, Plots.axis(0, MOST, 5, AxisWords.plain(0)));
        this.feelings = feelings.stream()
                .filter(feeling -> feeling.size() > 0)
                .sorted(Comparator.comparing(Feeling::sense).reversed().thenComparing(feeling -> -feeling.size()))
                .toList();
    }

    @Override
    void draw(Graphics2D graphics, Place place) {
        graphics.setFont(Ink.SMALL);
        graphics.setStroke(Ink.LEADING);
        List<Rectangle2D> taken = new ArrayList<>();
        for (Feeling feeling : feelings) {
            double x = place.x(feeling.day());
            double y = place.y(feeling.size());
            taken.add(new Rectangle2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
        }
        for (Feeling feeling : feelings) {
            double x = place.x(feeling.day());
            double y = place.y(feeling.size());
            boolean pain = feeling.sense() == Sense.PAIN;
            graphics.setPaint(pain ? Ink.DARK : Ink.GREY);
            if (pain) {
                graphics.fill(diamond(x, y));
            } else {
                graphics.setStroke(Ink.THIN);
                graphics.draw(new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
            }
            if (pain || feeling.size() >= WORTH_A_NAME) {
                name(graphics, place, feeling.region(), x, y, taken);
            }
        }
    }

    private static void name(
            Graphics2D graphics, Place place, String words, double x, double y, List<Rectangle2D> taken) {
        double width = Plots.width(Ink.SMALL, words, graphics);
        double[] starts = {x + RADIUS + 3, x - RADIUS - 3 - width};
        for (double left : starts) {
            Rectangle2D box = new Rectangle2D.Double(left, y - 6, width, 12);
            boolean inside = left >= place.area().getMinX()
                    && left + width <= place.area().getMaxX() + 20;
            if (inside && taken.stream().noneMatch(other -> other.intersects(box))) {
                taken.add(box);
                graphics.drawString(words, (float) left, (float) y + 4);
                return;
            }
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
}
