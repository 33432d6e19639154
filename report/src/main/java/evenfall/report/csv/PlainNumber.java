package evenfall.report.csv;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A number as people and programs both read it: a point, no exponent, six decimals at most, no trailing zeros. */
public final class PlainNumber {

    /** Decimals kept in results: a micrometre, a microsecond, far below any error of a measurement. */
    private static final int DECIMALS = 6;

    private static final double IN_ONE = 1e6;

    /** Up to here a value in units of the last decimal is exact enough to be rounded by itself. */
    private static final double LARGEST = 1e6;

    /** Nearer to the middle between two units than this, decimal digits must tell which way to round. */
    private static final double NEAR_TIE = 1e-3;

    private PlainNumber() {}

    /** The text of a finite value; {@code -0} is written as {@code 0}. */
    public static String of(double value) {
        double units = units(value);
        return Double.isNaN(units) ? byDecimals(value) : text((long) units);
    }

    /** The same rounding as a number. */
    public static double rounded(double value) {
        double units = units(value);
        return Double.isNaN(units) ? Double.parseDouble(byDecimals(value)) : units / IN_ONE + 0.0;
    }

    /** The value in whole units of the last decimal, or NaN where this quick way is not sure to be right. */
    private static double units(double value) {
        double scaled = value * IN_ONE;
        double units = Math.rint(scaled);
        boolean sure = Math.abs(value) < LARGEST && Math.abs(Math.abs(scaled - units) - 0.5) > NEAR_TIE;
        return sure ? units : Double.NaN;
    }

    private static String text(long units) {
        long size = Math.abs(units);
        StringBuilder text = new StringBuilder(20);
        if (units < 0) {
            text.append('-');
        }
        text.append(size / 1_000_000);
        int rest = (int) (size % 1_000_000);
        if (rest > 0) {
            text.append('.');
            for (int place = 100_000; rest > 0; place /= 10) {
                text.append((char) ('0' + rest / place));
                rest %= place;
            }
        }
        return text.toString();
    }

    private static String byDecimals(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
