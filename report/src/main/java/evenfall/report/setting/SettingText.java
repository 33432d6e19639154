package evenfall.report.setting;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a settings file: a line is {@code name = value}, with the unit behind the value or not, and what follows
 * {@code #} is for the reader. Blank lines are free; decimals have a point or a comma.
 */
public final class SettingText {

    private static final Words WORDS = Words.beside(SettingText.class);
    private static final Pattern NUMBER = Pattern.compile("([+-]?\\d{1,9}(?:[.,]\\d{1,9})?)\\s*(.*)");
    private static final int WIDTH = 100;

    private SettingText() {}

    /**
     * What a file sets, in its order.
     *
     * @param source what to call the file in a sentence
     * @throws UnusableInputException if a line cannot be understood, names what is not known or a figure that is not
     *     allowed; says the line and what would be
     */
    public static List<SettingValue> read(SettingList list, String source, String text) {
        List<SettingValue> values = new ArrayList<>();
        int number = 0;
        for (String line : text.startsWith("\uFEFF")
                ? text.substring(1).lines().toList()
                : text.lines().toList()) {
            number++;
            int comment = line.indexOf('#');
            String said = (comment < 0 ? line : line.substring(0, comment)).strip();
            if (!said.isEmpty()) {
                String where = WORDS.say("line", source, number);
                SettingValue value = value(list, where, said);
                if (values.stream().anyMatch(earlier -> earlier.setting().equals(value.setting()))) {
                    throw new UnusableInputException(
                            WORDS.say("twice", where, value.setting().name()));
                }
                values.add(value);
            }
        }
        return List.copyOf(values);
    }

    private static SettingValue value(SettingList list, String where, String said) {
        int equals = said.indexOf('=');
        if (equals < 0) {
            throw new UnusableInputException(WORDS.say("shape", where, said));
        }
        String name = said.substring(0, equals).strip();
        Setting setting = list.named(name)
                .orElseThrow(() -> new UnusableInputException(WORDS.say("unknown", where, name, list.names())));
        String figure = said.substring(equals + 1).strip();
        Matcher matcher = NUMBER.matcher(figure);
        if (!matcher.matches() || !isUnit(setting, matcher.group(2))) {
            throw new UnusableInputException(
                    WORDS.say("figure", where, figure, setting.name(), setting.say(setting.starting())));
        }
        double value = Double.parseDouble(matcher.group(1).replace(',', '.'));
        if (!setting.allows(value)) {
            throw new UnusableInputException(
                    WORDS.say("range", where, setting.name(), setting.say(value), setting.range()));
        }
        return new SettingValue(setting, value, where);
    }

    private static boolean isUnit(Setting setting, String text) {
        String unit = text.strip().toLowerCase(Locale.ROOT);
        return unit.isEmpty()
                || unit.equals(setting.unit().toLowerCase(Locale.ROOT))
                || (unit.equals("°") && setting.unit().equals("deg"));
    }

    /**
     * A file with every setting explained and what holds without it. Each stands behind a {@code #}, so that the file
     * changes nothing until somebody takes one away.
     */
    public static String starting(SettingList list) {
        StringBuilder text = new StringBuilder();
        comment(text, list.title());
        comment(text, WORDS.say("how"));
        for (Setting setting : list.settings()) {
            text.append('\n');
            comment(text, setting.explanation() + " " + WORDS.say("may.be", setting.range()));
            text.append("#")
                    .append(setting.name())
                    .append(" = ")
                    .append(setting.say(setting.starting()))
                    .append('\n');
        }
        return text.toString();
    }

    private static void comment(StringBuilder text, String sentence) {
        StringBuilder line = new StringBuilder("#");
        for (String word : sentence.split(" ", -1)) {
            if (line.length() + 1 + word.length() > WIDTH) {
                text.append(line).append('\n');
                line = new StringBuilder("#");
            }
            line.append(' ').append(word);
        }
        text.append(line).append('\n');
    }
}
