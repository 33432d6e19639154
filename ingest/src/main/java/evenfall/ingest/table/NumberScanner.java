package evenfall.ingest.table;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;

/**
 * Reads decimal numbers straight from bytes. Numbers of up to 15 significant digits without exponent take the short way
 * of Clinger (1990, "How to read floating point numbers accurately"): both the digits and the power of ten are exact, so
 * their quotient is correctly rounded. All others go to a general parser.
 */
final class NumberScanner {

    private static final double[] POWERS = new double[23];

    static {
        for (int i = 0; i < POWERS.length; i++) {
            POWERS[i] = Double.parseDouble("1e" + i);
        }
    }

    private final byte decimal;
    private double value;
    private int decimals;

    NumberScanner(byte decimal) {
        this.decimal = decimal;
    }

    /** The number last read. */
    double value() {
        return value;
    }

    /** How many digits stood behind its decimal point. */
    int decimals() {
        return decimals;
    }

    /**
     * Reads a number with spaces before and after it.
     *
     * @param bytes holds something that is no digit behind the number
     * @return where the number and the spaces after it end, or -1 if there is no plain number
     */
    int scan(byte[] bytes, int from) {
        int p = from;
        byte c = bytes[p];
        while (c == ' ') {
            c = bytes[++p];
        }
        int start = p;
        boolean negative = c == '-';
        if (negative || c == '+') {
            c = bytes[++p];
        }
        long digits = 0;
        int first = p;
        int digit;
        while ((digit = c - '0') >= 0 && digit <= 9) {
            digits = digits * 10 + digit;
            c = bytes[++p];
        }
        int count = p - first;
        int behind = 0;
        if (c == decimal) {
            int point = p;
            c = bytes[++p];
            while ((digit = c - '0') >= 0 && digit <= 9) {
                digits = digits * 10 + digit;
                c = bytes[++p];
            }
            behind = p - point - 1;
            count += behind;
        }
        decimals = behind;
        if (count == 0) {
            return -1;
        }
        if (c == 'e' || c == 'E' || count > 18 || behind > 22 || digits > (1L << 53)) {
            return general(bytes, start);
        }
        double magnitude = behind == 0 ? digits : digits / POWERS[behind];
        value = negative ? -magnitude : magnitude;
        while (c == ' ') {
            c = bytes[++p];
        }
        return p;
    }

    private int general(byte[] bytes, int start) {
        int p = start;
        byte c = bytes[p];
        while ((c >= '0' && c <= '9') || c == '-' || c == '+' || c == 'e' || c == 'E' || c == decimal) {
            c = bytes[++p];
        }
        byte[] copy = new byte[p - start];
        for (int i = 0; i < copy.length; i++) {
            byte b = bytes[start + i];
            copy[i] = b == decimal ? (byte) '.' : b;
        }
        try {
            value = JavaDoubleParser.parseDouble(copy);
        } catch (NumberFormatException e) {
            return -1;
        }
        while (c == ' ') {
            c = bytes[++p];
        }
        return Double.isFinite(value) ? p : -1;
    }
}
