package evenfall.ingest.words;

import java.util.Locale;

/** Numbers as they stand in sentences of findings and errors. */
public final class Digits {

    private Digits() {}

    /** A number with so many decimals and a point, whatever the machine's language. */
    public static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
