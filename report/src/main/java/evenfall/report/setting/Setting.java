package evenfall.report.setting;

import evenfall.ingest.words.Words;
import java.util.Locale;

/**
 * One figure a coach may set.
 *
 * @param name how a file names it: lower case words with hyphens
 * @param unit its unit, empty for a count or a ratio
 * @param starting what holds where nobody set it
 * @param low the least it may be
 * @param high the most it may be
 * @param whole whether only whole numbers make sense
 * @param explanation one sentence on what it does
 */
public record Setting(
        String name, String unit, double starting, double low, double high, boolean whole, String explanation) {

    private static final Words WORDS = Words.beside(Setting.class);

    public Setting {
        if (!name.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("'" + name + "' is no name of a setting");
        }
        if (!(low <= starting && starting <= high) || (whole && starting != Math.rint(starting))) {
            throw new IllegalArgumentException(name + " cannot start at " + starting);
        }
    }

    /** Whether it may be so much. */
    public boolean allows(double value) {
        return value >= low && value <= high && (!whole || value == Math.rint(value));
    }

    /** A value of it as a person writes it, with its unit: no more digits than it needs. */
    public String say(double value) {
        return unit.isEmpty() ? plain(value) : plain(value) + " " + unit;
    }

    /** What it may be, in words. */
    public String range() {
        return WORDS.say(whole ? "allowed.whole" : "allowed", plain(low), say(high));
    }

    static String plain(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }
}
