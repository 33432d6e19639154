package evenfall.ingest.words;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they stand in sentences of findings and errors. */
public final class Digits {

    private Digits() {}

    /** A number with so many decimals and a point, whatever the machine's language; what rounds to nothing has no sign. */
    public static String fixed(double value, int decimals) {
        // Without a pattern, which would be read anew for each of the thousands of numbers of a page.
        return Double.isFinite(value)
                ? BigDecimal.valueOf(value)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .toPlainString()
                : Double.toString(value);
    }
}
