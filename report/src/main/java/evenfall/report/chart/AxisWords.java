package evenfall.report.chart;

import evenfall.ingest.words.Words;
import evenfall.report.words.Figures;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;

/** Tick labels that say sides in words instead of signs, such as {@code left 10}; zero has no side. */
final class AxisWords extends NumberFormat {

    private static final long serialVersionUID = 1L;

    private final String above;
    private final String below;
    private final int decimals;

    private AxisWords(String above, String below, int decimals) {
        this.above = above;
        this.below = below;
        this.decimals = decimals;
    }

    /** Words by key of the chart's bundle for values above and below zero, each with a gap for the number. */
    static AxisWords sided(Words words, String above, String below, int decimals) {
        return new AxisWords(words.say(above, "{0}"), words.say(below, "{0}"), decimals);
    }

    /** Plain numbers. */
    static AxisWords plain(int decimals) {
        return new AxisWords("{0}", "−{0}", decimals);
    }

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
        String size = Figures.size(number, decimals);
        boolean zero = Figures.fixed(number, decimals).equals(Figures.fixed(0.0, decimals));
        return to.append(zero ? size : (number > 0 ? above : below).replace("{0}", size));
    }

    @Override
    public StringBuffer format(long number, StringBuffer to, FieldPosition position) {
        return format((double) number, to, position);
    }

    @Override
    public Number parse(String source, ParsePosition position) {
        throw new UnsupportedOperationException("tick labels are only written");
    }
}
