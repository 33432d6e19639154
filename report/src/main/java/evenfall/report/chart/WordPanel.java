package evenfall.report.chart;

import evenfall.report.chart.BlockChart.Place;
import evenfall.report.chart.BlockChart.Saying;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;

/** Words, each beginning at its day, in rows from the top so that none lies on another. */
final class WordPanel extends DayPanel {

    private static final int ROWS = 4;
    private static final int ROW = 18;

    private final List<Saying> sayings;

    WordPanel(String title, List<Saying> sayings) {
        super(title, Plots.axis(0, 1, 1, AxisWords.plain(0)));
        this.sayings = List.copyOf(sayings);
        axis().setTickLabelsVisible(false);
    }

    @Override
    void draw(Graphics2D graphics, Place place) {
        graphics.setFont(Ink.SMALL);
        graphics.setStroke(Ink.THIN);
        double[] ends = new double[ROWS];
        for (Saying saying : sayings) {
            double x = place.x(saying.day());
            double width = Plots.width(Ink.SMALL, saying.words(), graphics);
            double left = Math.max(
                    place.area().getMinX(), Math.min(x + 4, place.area().getMaxX() + 10 - width));
            int row = 0;
            while (row < ROWS - 1 && ends[row] > left) {
                row++;
            }
            ends[row] = left + width + 8;
            double baseline = place.area().getMinY() + ROW * (row + 1) - 4.0;
            graphics.setPaint(Ink.ZERO);
            graphics.draw(new Line2D.Double(x, baseline - 11, x, place.area().getMaxY()));
            graphics.setPaint(Ink.DARK);
            graphics.drawString(saying.words(), (float) left, (float) baseline);
        }
    }
}
