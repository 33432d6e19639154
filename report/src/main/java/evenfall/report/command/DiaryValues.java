package evenfall.report.command;

import evenfall.report.log.DiaryEntry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Checks what is entered in a diary. */
final class DiaryValues {

    private static final Pattern RESULT = Pattern.compile("([+-]?\\d{1,9}(?:[.,]\\d{1,6})?)\\s*(\\S.*)?");
    private static final Pattern DECIMAL = Pattern.compile("\\d{1,4}(?:[.,]\\d{1,2})?");
    private static final double HIGHEST_EFFORT = 10;
    private static final double MINUTES_A_DAY = 1440;

    private DiaryValues() {}

    /** Reads REGION=NUMBER pairs with whole numbers from 0 to 10. */
    static Map<String, Integer> regions(String option, List<String> pairs) {
        Map<String, Integer> regions = new LinkedHashMap<>();
        for (String pair : pairs) {
            int split = pair.lastIndexOf('=');
            String region = split < 0 ? "" : pair.substring(0, split).strip();
            String number = split < 0 ? "" : pair.substring(split + 1).strip();
            if (region.isEmpty() || !number.matches("\\d|10")) {
                throw new UsageException(
                        option + " '" + pair
                                + "' cannot be read; write REGION=NUMBER with a whole number from 0 to 10, such as left-calf=3.");
            }
            if (regions.put(region, Integer.valueOf(number)) != null) {
                throw new UsageException(option + " names '" + region + "' twice; give each region once.");
            }
        }
        return regions;
    }

    static List<String> signs(List<String> words) {
        List<String> signs = new ArrayList<>();
        for (String word : words) {
            String sign = word.strip().toLowerCase(Locale.ROOT);
            if (!DiaryEntry.SIGNS.contains(sign) && !sign.equals(DiaryEntry.NO_SIGN)) {
                throw new UsageException("--sign '" + word
                        + "' is not known; choose swelling, giving-way, locking, numbness or head-impact.");
            }
            if (!signs.contains(sign)) {
                signs.add(sign);
            }
        }
        if (signs.size() > 1 && signs.contains(DiaryEntry.NO_SIGN)) {
            throw new UsageException("--sign none says that no sign is there any more; give it alone.");
        }
        return signs;
    }

    static double effort(String text) {
        double effort = decimal("--effort", text, "a number from 0 to 10");
        if (effort > HIGHEST_EFFORT) {
            throw new UsageException("--effort " + text + " is too high; give a number from 0 to 10.");
        }
        return effort;
    }

    static double minutes(String text) {
        double minutes = decimal("--minutes", text, "the minutes of the session");
        if (minutes <= 0 || minutes > MINUTES_A_DAY) {
            throw new UsageException("--minutes " + text + " is no length of a session; give 1 to 1440.");
        }
        return minutes;
    }

    /** Reads NAME=VALUE[UNIT] and keeps value and unit with a blank between. */
    static Map<String, String> results(List<String> pairs) {
        Map<String, String> results = new LinkedHashMap<>();
        for (String pair : pairs) {
            int split = pair.indexOf('=');
            String name = split < 0 ? "" : pair.substring(0, split).strip();
            Matcher value =
                    RESULT.matcher(split < 0 ? "" : pair.substring(split + 1).strip());
            if (name.isEmpty() || !value.matches()) {
                throw new UsageException(
                        "--result '" + pair
                                + "' cannot be read; write NAME=VALUE with a number and, if it has one, its unit, such as reach=31cm.");
            }
            String unit = value.group(2);
            String number = String.valueOf(value.group(1)).replace(',', '.');
            if (results.put(name, unit == null ? number : number + " " + unit.strip()) != null) {
                throw new UsageException("--result names '" + name + "' twice; give each result once.");
            }
        }
        return results;
    }

    static @Nullable String text(String option, @Nullable String text) {
        if (text != null && text.isBlank()) {
            throw new UsageException(option + " is empty; write something or leave it out.");
        }
        return text;
    }

    private static double decimal(String option, String text, String what) {
        if (!DECIMAL.matcher(text.strip()).matches()) {
            throw new UsageException(option + " '" + text + "' cannot be read; give " + what + ".");
        }
        return Double.parseDouble(text.strip().replace(',', '.'));
    }
}
