package evenfall.report.csv;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A number as people and programs both read it: a point, no exponent, six decimals at most, no trailing zeros. */
public final class PlainNumber {

    /** Decimals kept in results: a micrometre, a microsecond, far below any error of a measurement. */
    private static final int DECIMALS = 6;

    private PlainNumber() {}

    /** The text of a finite value; {@code -0} is written as {@code 0}. */
    public static String of(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** The same rounding as a number. */
    public static double rounded(double value) {
        return Double.parseDouble(of(value));
    }
}
