package evenfall.report.chart;

import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.chart.BlockChart.Count;
import evenfall.report.chart.BlockChart.Place;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;

/**
 * Landings of each session by foot: left, both, right, left always left of right. The right foot's bars are striped, so that
 * they are told from the left foot's without colour where there is no room for letters.
 */
final class CountPanel extends DayPanel {

    /** Room for one session, in days, and the narrowest bar that carries a letter. */
    private static final double ROOM_DAYS = 2.6;

    private static final double WIDEST = 9;
    private static final double LETTERED = 7;

    private static final double STRIPE = 2.5;
    private static final double GROOVE = 1;

    private final Words words;
    private final List<Count> counts;

    CountPanel(String title, Words words, List<Count> counts) {
        super(title, axis(counts));
        this.words = words;
        this.counts = List.copyOf(counts);
    }

    private static NumberAxis axis(List<Count> counts) {
        int most = 4;
        for (Count count : counts) {
            most = Math.max(most, Math.max(count.both(), Math.max(count.left(), count.right())));
        }
        double step = Math.max(1, Plots.step(most));
        return Plots.axis(0, Math.ceil((most + 0.2) / step) * step, step, AxisWords.plain(0));
    }

    @Override
    void draw(Graphics2D graphics, Place place) {
        graphics.setFont(Ink.SMALL);
        double room = place.area().getWidth() / place.days().getRange().getLength() * ROOM_DAYS;
        double bar = Math.min(WIDEST, room / 3);
        for (Count count : counts) {
            double x = place.x(count.day());
            bar(graphics, place, x - 1.5 * bar, bar, count.left(), Side.LEFT);
            bar(graphics, place, x - 0.5 * bar, bar, count.both(), Side.BOTH);
            bar(graphics, place, x + 0.5 * bar, bar, count.right(), Side.RIGHT);
        }
    }

    private void bar(Graphics2D graphics, Place place, double x, double width, int count, Side side) {
        if (count == 0) {
            return;
        }
        double top = place.y(count);
        double bottom = place.y(0);
        graphics.setPaint(Ink.of(side));
        if (side == Side.RIGHT) {
            for (double y = bottom; y > top; y -= STRIPE + GROOVE) {
                double upper = Math.max(top, y - STRIPE);
                graphics.fill(new Rectangle2D.Double(x, upper, width - 1, y - upper));
            }
        } else {
            graphics.fill(new Rectangle2D.Double(x, top, width - 1, bottom - top));
        }
        if (side != Side.BOTH && width >= LETTERED) {
            String letter = words.say("side.letter." + side.code());
            graphics.setPaint(Ink.letter(side));
            double letterWidth = Plots.width(Ink.SMALL, letter);
            graphics.drawString(letter, (float) (x + (width - 1 - letterWidth) / 2), (float) top - 3);
        }
    }
}
