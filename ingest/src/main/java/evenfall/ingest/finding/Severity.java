package evenfall.ingest.finding;

import java.util.Locale;

/** How much a finding costs. */
public enum Severity {
    /** Worth knowing, costs nothing. */
    NOTE,
    /** Widens the uncertainty of something. */
    WARNING,
    /** Something cannot be measured because of it. */
    ERROR;

    /** The name in results: {@code note}, {@code warning} or {@code error}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
