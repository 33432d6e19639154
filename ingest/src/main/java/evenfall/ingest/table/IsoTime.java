package evenfall.ingest.table;

/**
 * Reads dates and times of day after ISO 8601 from bytes: {@code 2026-03-02T10:15:30.005Z}, with a space for the T,
 * with any number of decimals (comma or dot), with or without offset, in the basic form without hyphens and colons, or
 * a time of day alone. A time without offset is taken as UTC: only differences matter. Beside the standard, what
 * spreadsheets make of it: {@code 02.03.2026} and {@code 2026/03/02} as dates, {@code 10:15:30:005} with thousandths.
 */
final class IsoTime {

    private static final long SECOND = 1_000_000_000L;

    private byte[] bytes = new byte[0];
    private int position;
    private long nanos;

    /** Nanoseconds since 1970 of the time last read, or since midnight for a time of day alone. */
    long nanos() {
        return nanos;
    }

    /**
     * Reads a time with spaces before and after it.
     *
     * @return where it ends, or -1 if there is none
     */
    int scan(byte[] from, int start) {
        bytes = from;
        position = start;
        spaces();
        int digits = digitsAhead();
        long days = 0;
        if (digits == 2 && at(2) == '.') {
            // 02.03.2026, as spreadsheets write it; no other order is written with points.
            int day = number(2);
            position++;
            int month = number(2);
            boolean point = accept('.');
            int year = number(4);
            if (!point || year < 0 || month < 1 || month > 12 || day < 1 || day > 31) {
                return -1;
            }
            days = daysSinceEpoch(year, month, day);
            if (!accept('T') && !accept(' ')) {
                return -1;
            }
            spaces();
        } else if ((digits == 4 && (at(4) == '-' || at(4) == '/'))
                || (digits == 8 && (at(8) == 'T' || at(8) == 't' || at(8) == ' '))) {
            boolean extended = digits == 4;
            char mark = (char) at(4);
            int year = number(4);
            if (extended) {
                position++;
            }
            int month = number(2);
            if (extended && !accept(mark)) {
                return -1;
            }
            int day = number(2);
            if (month < 1 || month > 12 || day < 1 || day > 31) {
                return -1;
            }
            days = daysSinceEpoch(year, month, day);
            if (!accept('T') && !accept('t') && !accept(' ')) {
                return -1;
            }
            spaces();
        }
        return clock(days);
    }

    private int clock(long days) {
        int hour = number(2);
        boolean extended = accept(':');
        int minute = number(2);
        if (hour < 0 || hour > 24 || minute < 0 || minute > 59) {
            return -1;
        }
        int second = 0;
        if (extended ? accept(':') : digitsAhead() >= 2) {
            second = number(2);
            if (second < 0 || second > 60) {
                return -1;
            }
        } else if (!extended) {
            return -1;
        }
        long fraction = 0;
        boolean thousandths = extended && at(0) == ':' && digitsAfter(1) == 3;
        if ((at(0) == '.' || at(0) == ',' || thousandths) && at(1) >= '0' && at(1) <= '9') {
            position++;
            long unit = SECOND;
            while (at(0) >= '0' && at(0) <= '9') {
                unit /= 10;
                fraction += unit * (at(0) - '0');
                position++;
            }
        }
        long offset = offset();
        spaces();
        nanos = (((days * 24 + hour) * 60 + minute - offset) * 60 + second) * SECOND + fraction;
        return position;
    }

    /** The offset from UTC in minutes; 0 when there is none. */
    private long offset() {
        if (accept('Z') || accept('z')) {
            return 0;
        }
        int sign = at(0) == '+' ? 1 : at(0) == '-' ? -1 : 0;
        if (sign == 0) {
            return 0;
        }
        position++;
        int hours = number(2);
        boolean colon = accept(':');
        int minutes = colon || digitsAhead() == 2 ? number(2) : 0;
        return sign * (hours * 60L + minutes);
    }

    /** Days from 1970-01-01 in the Gregorian calendar. */
    private static long daysSinceEpoch(int year, int month, int day) {
        // Years are counted from March, so that the leap day is the last of a year.
        long y = month > 2 ? year : year - 1;
        long era = Math.floorDiv(y, 400);
        long yearOfEra = y - era * 400;
        long dayOfYear = (153L * (month + (month > 2 ? -3 : 9)) + 2) / 5 + day - 1;
        long dayOfEra = yearOfEra * 365 + yearOfEra / 4 - yearOfEra / 100 + dayOfYear;
        return era * 146_097 + dayOfEra - 719_468;
    }

    private byte at(int ahead) {
        int index = position + ahead;
        return index < bytes.length ? bytes[index] : 0;
    }

    private boolean accept(char c) {
        if (at(0) == c) {
            position++;
            return true;
        }
        return false;
    }

    private void spaces() {
        while (at(0) == ' ') {
            position++;
        }
    }

    private int digitsAhead() {
        return digitsAfter(0);
    }

    private int digitsAfter(int skipped) {
        int n = 0;
        while (at(skipped + n) >= '0' && at(skipped + n) <= '9') {
            n++;
        }
        return n;
    }

    private int number(int digits) {
        int value = 0;
        for (int i = 0; i < digits; i++) {
            int digit = at(0) - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            value = value * 10 + digit;
            position++;
        }
        return value;
    }
}
