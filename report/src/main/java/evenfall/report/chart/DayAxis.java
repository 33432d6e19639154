package evenfall.report.chart;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;

/** An axis of days with a tick on Mondays. */
final class DayAxis {

    /** 5 January 1970, a Monday, so that whole weeks are multiples of seven. */
    private static final long A_MONDAY = 4;

    private static final int LABEL_WIDTH = 48;

    private DayAxis() {}

    /** From some days before the first to some days after the last, so that marks at the ends are whole. */
    static NumberAxis between(LocalDate from, LocalDate to, int pixels) {
        double low = value(from) - 2;
        double high = value(to) + 2;
        double weeks = (high - low) / 7;
        int step = (int) Math.max(1, Math.ceil(weeks * LABEL_WIDTH / pixels));
        return Plots.axis(low, high, 7.0 * step, new Labels());
    }

    static double value(LocalDate day) {
        return day.toEpochDay() - A_MONDAY;
    }

    /** Writes days such as {@code 3 Mar}. */
    private static final class Labels extends NumberFormat {

        private static final long serialVersionUID = 1L;
        private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

        @Override
        public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
            return to.append(DAY.format(LocalDate.ofEpochDay(Math.round(number) + A_MONDAY)));
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
}
