package evenfall.ingest.wire;

import java.nio.charset.StandardCharsets;

/** Reads one decimal number of a line in place; holds the position it stopped at. */
final class DecimalField {

    /** More digits than this do not fit the exact short way. */
    private static final int EXACT_DIGITS = 15;

    private static final int EXACT_POWER = 22;

    /** Powers of ten up to this are exact in double precision. */
    private static final double[] POWERS = powers();

    private int end;

    /** Where the last number ended: the index of the first byte after it. */
    int end() {
        return end;
    }

    /**
     * The number at {@code from}, blanks before and after it skipped; NaN where there is none. Takes an optional sign,
     * digits with an optional point, and an optional exponent; nothing else.
     */
    double read(byte[] line, int from, int to) {
        int i = skipBlanks(line, from, to);
        int start = i;
        boolean negative = i < to && line[i] == '-';
        if (i < to && (line[i] == '-' || line[i] == '+')) {
            i++;
        }
        long mantissa = 0;
        int digits = 0;
        int significant = 0;
        int power = 0;
        boolean point = false;
        for (; i < to; i++) {
            byte b = line[i];
            if (b == '.' && !point) {
                point = true;
            } else if (b >= '0' && b <= '9') {
                digits++;
                significant += significant > 0 || b != '0' ? 1 : 0;
                mantissa = significant <= EXACT_DIGITS ? 10 * mantissa + (b - '0') : mantissa;
                power -= point ? 1 : 0;
            } else {
                break;
            }
        }
        if (digits == 0) {
            end = i;
            return Double.NaN;
        }
        if (i < to && (line[i] == 'e' || line[i] == 'E')) {
            int exponentEnd = exponentEnd(line, i + 1, to);
            if (exponentEnd < 0) {
                end = i;
                return Double.NaN;
            }
            end = skipBlanks(line, exponentEnd, to);
            return slowly(line, start, exponentEnd);
        }
        end = skipBlanks(line, i, to);
        if (significant > EXACT_DIGITS || -power > EXACT_POWER) {
            return slowly(line, start, i);
        }
        double size = mantissa / POWERS[-power];
        return negative ? -size : size;
    }

    private static int exponentEnd(byte[] line, int from, int to) {
        int i = from < to && (line[from] == '-' || line[from] == '+') ? from + 1 : from;
        int digits = 0;
        while (i < to && line[i] >= '0' && line[i] <= '9') {
            i++;
            digits++;
        }
        return digits >= 1 && digits <= 3 ? i : -1;
    }

    private static double slowly(byte[] line, int from, int to) {
        return Double.parseDouble(new String(line, from, to - from, StandardCharsets.US_ASCII));
    }

    private static int skipBlanks(byte[] line, int from, int to) {
        int i = from;
        while (i < to && line[i] == ' ') {
            i++;
        }
        return i;
    }

    private static double[] powers() {
        double[] powers = new double[EXACT_POWER + 1];
        powers[0] = 1;
        for (int i = 1; i < powers.length; i++) {
            powers[i] = 10 * powers[i - 1];
        }
        return powers;
    }
}
