package evenfall.report.chart;

import evenfall.fusion.landing.Moments;
import evenfall.ingest.words.Words;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Names a landing's moments above the charts, in rows so that no name lies on another. */
final class MomentLabels {

    private static final Words WORDS = Words.beside(MomentLabels.class);
    private static final int ROW = 15;
    private static final int AIR = 4;

    private final LandingScale scale;

    MomentLabels(LandingScale scale) {
        this.scale = scale;
    }

    /** The moments that are known, in order of time, s from contact. */
    static List<Moment> of(Moments moments) {
        List<Moment> found = new ArrayList<>();
        double contact = moments.contactS();
        add(found, "moment.takeoff", moments.takeoffS(), contact);
        add(found, "moment.contact", contact, contact);
        add(found, "moment.peak", moments.peakS(), contact);
        add(found, "moment.lowest", moments.lowestS(), contact);
        add(found, "moment.settled", moments.settledS(), contact);
        return found;
    }

    private static void add(List<Moment> found, String key, @Nullable Double at, double contact) {
        if (at != null) {
            found.add(new Moment(key, at - contact));
        }
    }

    /** Draws the names above {@code data}; take-off and contact to the left of their lines, the rest to the right. */
    void draw(Graphics2D graphics, Rectangle2D data, List<Moment> moments) {
        graphics.setFont(Ink.SMALL);
        List<Double> rowEnds = new ArrayList<>();
        for (Moment moment : moments) {
            if (!scale.shows(moment.fromContactS())) {
                continue;
            }
            double share = (moment.fromContactS() - scale.fromS()) / (scale.toS() - scale.fromS());
            double x = data.getMinX() + share * data.getWidth();
            String words = WORDS.say(moment.key());
            double width = Plots.width(Ink.SMALL, words);
            double left = moment.fromContactS() <= 0 ? x - AIR - width : x + AIR;
            int row = 0;
            while (row < rowEnds.size() && rowEnds.get(row) > left) {
                row++;
            }
            double end = Math.max(left + width, x) + AIR;
            if (row == rowEnds.size()) {
                rowEnds.add(end);
            } else {
                rowEnds.set(row, end);
            }
            double baseline = ROW - 3 + (double) row * ROW;
            graphics.setPaint(moment.fromContactS() == 0 ? Ink.DARK : Ink.GREY);
            graphics.drawString(words, (float) left, (float) baseline);
            graphics.setPaint(Ink.ZERO);
            graphics.setStroke(Ink.THIN);
            graphics.draw(new Line2D.Double(x, baseline - 9, x, data.getMinY()));
        }
    }

    /**
     * One moment.
     *
     * @param key of its name in the bundle
     * @param fromContactS s from contact
     */
    record Moment(String key, double fromContactS) {}
}
