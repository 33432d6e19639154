package evenfall.report.form;

import java.util.Locale;

/** How a landing was held: none, one, or two and more of the four questions failed. */
public enum Form {
    HELD,
    STRAINED,
    LOST;

    /** The word in results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
