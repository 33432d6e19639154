package evenfall.report.words;

import evenfall.ingest.words.Digits;
import org.jspecify.annotations.Nullable;

/** Numbers as people read them: rounded, a true minus sign, never "-0", a dash where nothing was measured. */
public final class Figures {

    /** What stands where nothing was measured. */
    public static final String MISSING = "–";

    private Figures() {}

    /**
     * A number with so many decimals; {@link #MISSING} for null and for what is no number.
     *
     * @param decimals 0 or more
     */
    public static String fixed(@Nullable Double value, int decimals) {
        if (value == null || !Double.isFinite(value)) {
            return MISSING;
        }
        return Digits.fixed(value, decimals).replace('-', '−');
    }

    /** The same without its sign, for numbers whose side stands in words beside them. */
    public static String size(@Nullable Double value, int decimals) {
        return fixed(value == null ? null : Math.abs(value), decimals);
    }

    /** A drop height, m: one decimal, or two where the second is not 0. */
    public static String height(@Nullable Double metres) {
        String digits = fixed(metres, 2);
        return digits.endsWith("0") ? digits.substring(0, digits.length() - 1) : digits;
    }

    /** A moment of a recording as minutes and seconds, such as {@code 4:07}. */
    public static String clock(double seconds) {
        long whole = Math.round(seconds);
        return whole / 60 + ":" + (whole % 60 < 10 ? "0" : "") + whole % 60;
    }
}
