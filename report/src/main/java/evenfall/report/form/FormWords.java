package evenfall.report.form;

import evenfall.ingest.words.Words;
import evenfall.report.words.Figures;
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
            case "deg/s" -> number(size, 0) + "°/s";
            case "m" -> metres(size);
            case "g" -> g(size);
            default -> size < 1 ? WORDS.say("none") : number(size, 0);
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
            case "deg/s" -> number(value, 0) + "°/s";
            case "m" -> metres(value);
            default -> g(value);
        };
    }

    private static String degrees(double value) {
        return number(value, 1) + "°";
    }

    private static String degreeLimit(double value) {
        return value == Math.rint(value) ? number(value, 0) + "°" : degrees(value);
    }

    static String metres(@Nullable Double value) {
        return number(value, 2) + " m";
    }

    static String g(@Nullable Double value) {
        return number(value, 1) + " g";
    }

    private static String number(@Nullable Double value, int decimals) {
        return Figures.fixed(value == null ? 0.0 : value, decimals);
    }
}
