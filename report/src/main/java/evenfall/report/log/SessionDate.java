package evenfall.report.log;

import evenfall.report.words.Days;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a session: a day, and a number where the day has more than one.
 *
 * @param day the day
 * @param number 0 for the day's plain name, else the {@code N} of {@code YYYY-MM-DD-N}
 */
public record SessionDate(LocalDate day, int number) implements Comparable<SessionDate> {

    private static final Pattern NAME = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})(?:-([1-9]\\d{0,2}))?");
    private static final Comparator<SessionDate> ORDER =
            Comparator.comparing(SessionDate::day).thenComparingInt(SessionDate::number);

    /** Reads {@code YYYY-MM-DD} or {@code YYYY-MM-DD-N} with N from 1 to 999; empty for anything else. */
    public static Optional<SessionDate> parse(String text) {
        Matcher matcher = NAME.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        try {
            // A log has thousands of these: a formatter would take as long as all else of listing them.
            LocalDate day = LocalDate.of(
                    Integer.parseInt(matcher.group(1)),
                    Integer.parseInt(matcher.group(2)),
                    Integer.parseInt(matcher.group(3)));
            String number = matcher.group(4);
            return Optional.of(new SessionDate(day, number == null ? 0 : Integer.parseInt(number)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The next name for a session of the same day: the first after the plain one is {@code -2}. */
    public SessionDate next() {
        return new SessionDate(day, number == 0 ? 2 : number + 1);
    }

    /** As people read it, such as {@code 3 March 2026}, or {@code 3 March 2026 (2)} for the second of a day. */
    public String words() {
        return Days.words(day) + (number == 0 ? "" : " (" + number + ")");
    }

    /** The words of a session's name; the name itself where it is none. */
    public static String words(String name) {
        return parse(name).map(SessionDate::words).orElse(name);
    }

    @Override
    public int compareTo(SessionDate other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return number == 0 ? day.toString() : day + "-" + number;
    }
}
