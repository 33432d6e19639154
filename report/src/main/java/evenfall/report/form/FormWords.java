package evenfall.report.form;

import evenfall.report.words.Words;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Measures in words, sides written out. */
final class FormWords {

    private static final Words WORDS = Words.beside(FormWords.class);

    private FormWords() {}

    /** A measure of a landing, with the sign results have, such as {@code trunk leaned right 6.2°}. */
    static String of(Judged measure, double value) {
        return say("said.", measure, value);
    }

    /** The same in few words, such as {@code 1.8° to the right}. */
    static String brief(Judged measure, double value) {
        return say("brief.", measure, value);
    }

    /** A limit of a measure with its unit. */
    static String limit(Judged measure, double size) {
        return switch (measure.measure().unit()) {
            case "deg" -> degreeLimit(size);
            case "deg/s" -> format("%.0f deg/s", size);
            case "m" -> metres(size);
            case "g" -> g(size);
            default -> size < 1 ? WORDS.say("none") : format("%.0f", size);
        };
    }

    private static String say(String kind, Judged measure, double value) {
        String name = kind + measure.measure().name();
        if (measure == Judged.STEPS_BACK) {
            return WORDS.say(name, Math.round(value));
        }
        return WORDS.knows(name)
                ? WORDS.say(name, figure(measure, measure.way().size(value)))
                : WORDS.say(name + (value > 0 ? ".plus" : ".minus"), figure(measure, Math.abs(value)));
    }

    private static String figure(Judged measure, double value) {
        return switch (measure.measure().unit()) {
            case "deg" -> degrees(value);
            case "deg/s" -> format("%.0f deg/s", value);
            case "m" -> metres(value);
            default -> g(value);
        };
    }

    private static String degrees(double value) {
        return format("%.1f°", value);
    }

    private static String degreeLimit(double value) {
        return value == Math.rint(value) ? format("%.0f°", value) : degrees(value);
    }

    static String metres(@Nullable Double value) {
        return format("%.2f m", value);
    }

    static String g(@Nullable Double value) {
        return format("%.1f g", value);
    }

    private static String format(String pattern, @Nullable Double value) {
        return String.format(Locale.ROOT, pattern, value == null ? 0.0 : value);
    }
}
