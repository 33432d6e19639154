package evenfall.report.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days as people read them. */
public final class Days {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private Days() {}

    /** A day such as {@code 3 March 2026}. */
    public static String words(LocalDate day) {
        return DAY.format(day);
    }
}
