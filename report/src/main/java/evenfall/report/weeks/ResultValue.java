package evenfall.report.weeks;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A result of the diary as a number.
 *
 * @param value the number it begins with
 * @param unit what stands behind it; empty where nothing does
 */
public record ResultValue(double value, String unit) {

    private static final Pattern NUMBER = Pattern.compile("\\s*([+-]?\\d+(?:[.,]\\d+)?)(.*)");

    /** The number a result begins with, if it does. */
    public static Optional<ResultValue> of(String text) {
        Matcher matcher = NUMBER.matcher(text);
        return matcher.matches()
                ? Optional.of(new ResultValue(
                        Double.parseDouble(matcher.group(1).replace(',', '.')),
                        matcher.group(2).strip()))
                : Optional.empty();
    }
}
