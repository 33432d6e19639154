package evenfall.report.form;

import java.util.Locale;

/** Where a limit came from. */
public enum LimitSource {
    /** The coach set it. */
    COACH,
    /** The athlete's own baseline. */
    OWN,
    /** Where a coach starts. */
    STARTING;

    /** The word in results. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
