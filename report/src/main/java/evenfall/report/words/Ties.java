package evenfall.report.words;

import java.util.Set;

/**
 * Holds a number and its unit together, so that no line ends between them: the blank before a unit and the one after a plus
 * or minus sign of an error become no-break spaces. Nothing else is changed, and what is tied already stays so.
 */
public final class Ties {

    private static final char NO_BREAK = '\u00a0';
    private static final int LONGEST = 3;
    private static final Set<String> UNITS =
            Set.of("m", "cm", "mm", "g", "g/s", "s", "ms", "%", "kg", "Hz", "min", "m/s");

    private Ties() {}

    /** The same text, tied. */
    public static String tied(String text) {
        int blank = text.indexOf(' ');
        if (blank < 0) {
            return text;
        }
        StringBuilder tied = null;
        for (; blank >= 0; blank = text.indexOf(' ', blank + 1)) {
            if (ties(text, blank)) {
                tied = tied == null ? new StringBuilder(text) : tied;
                tied.setCharAt(blank, NO_BREAK);
            }
        }
        return tied == null ? text : tied.toString();
    }

    /** The same text with plain blanks again. */
    public static String loose(String text) {
        return text.replace(NO_BREAK, ' ');
    }

    private static boolean ties(String text, int blank) {
        if (blank == 0) {
            return false;
        }
        char before = text.charAt(blank - 1);
        return before == '±' || (isDigit(before) && startsUnit(text, blank + 1));
    }

    private static boolean startsUnit(String text, int from) {
        int end = from;
        while (end < text.length()
                && end <= from + LONGEST
                && (Character.isLetter(text.charAt(end)) || text.charAt(end) == '/' || text.charAt(end) == '%')) {
            end++;
        }
        return UNITS.contains(text.substring(from, end)) || text.startsWith("± ", from);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
