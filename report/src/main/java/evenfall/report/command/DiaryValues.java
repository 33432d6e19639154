package evenfall.report.command;

import evenfall.ingest.words.Words;
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

    private static final Words WORDS = Words.beside(DiaryValues.class);

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
                throw new UsageException(WORDS.say("diary.region", option, pair));
            }
            if (regions.put(region, Integer.valueOf(number)) != null) {
                throw new UsageException(WORDS.say("diary.region.twice", option, region));
            }
        }
        return regions;
    }

    static List<String> signs(List<String> words) {
        List<String> signs = new ArrayList<>();
        for (String word : words) {
            String sign = word.strip().toLowerCase(Locale.ROOT);
            if (!DiaryEntry.SIGNS.contains(sign) && !sign.equals(DiaryEntry.NO_SIGN)) {
                throw new UsageException(WORDS.say("diary.sign", word));
            }
            if (!signs.contains(sign)) {
                signs.add(sign);
            }
        }
        if (signs.size() > 1 && signs.contains(DiaryEntry.NO_SIGN)) {
            throw new UsageException(WORDS.say("diary.sign.none"));
        }
        return signs;
    }

    static double effort(String text) {
        double effort = decimal("--effort", text, WORDS.say("diary.effort.asked"));
        if (effort > HIGHEST_EFFORT) {
            throw new UsageException(WORDS.say("diary.effort", text));
        }
        return effort;
    }

    static double minutes(String text) {
        double minutes = decimal("--minutes", text, WORDS.say("diary.minutes.asked"));
        if (minutes <= 0 || minutes > MINUTES_A_DAY) {
            throw new UsageException(WORDS.say("diary.minutes", text));
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
                throw new UsageException(WORDS.say("diary.result", pair));
            }
            String unit = value.group(2);
            String number = String.valueOf(value.group(1)).replace(',', '.');
            if (results.put(name, unit == null ? number : number + " " + unit.strip()) != null) {
                throw new UsageException(WORDS.say("diary.result.twice", name));
            }
        }
        return results;
    }

    static @Nullable String text(String option, @Nullable String text) {
        if (text != null && text.isBlank()) {
            throw new UsageException(WORDS.say("diary.text", option));
        }
        return text;
    }

    private static double decimal(String option, String text, String what) {
        if (!DECIMAL.matcher(text.strip()).matches()) {
            throw new UsageException(WORDS.say("diary.number", option, text, what));
        }
        return Double.parseDouble(text.strip().replace(',', '.'));
    }
}
