package evenfall.ingest.table;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.function.Supplier;

/**
 * Walks through the rows of a table. A row of plain numbers is read in one pass over its bytes; whatever else turns up
 * (blank lines, comments, quotes that hold line ends, rows that are not in order) is given to {@link RowText}.
 *
 * <p>The buffer always holds the longest row allowed ahead, and a line feed behind its last byte, so that the inner
 * loops need no other bound.
 */
final class RowReader {

    private static final Words WORDS = Words.beside(RowReader.class);

    /** What the next row turned out to be. */
    enum Outcome {
        /** A good row, in {@link #row()}. */
        ROW,
        /** Nothing for this sensor: blank, a comment, another sensor's row. */
        SKIPPED,
        /** Not usable; {@link #reason()} says why. */
        BAD,
        /** The last row, not written to its end. */
        HALF_WRITTEN,
        /** No more rows. */
        END
    }

    /** More bytes than this are no row of a recording. */
    static final int LONGEST_ROW = 1 << 16;

    private static final int BUFFER = 1 << 18;
    private static final byte SKIP = -1;
    private static final byte TIME = 6;
    private static final byte SENSOR = 7;

    private final InputStream in;
    private final String name;
    private final byte separator;
    private final byte[] roles;
    private final int cells;
    private final boolean iso;
    private final byte[] sensor;
    private final boolean plain;
    private final double[] largest;
    private final NumberScanner numbers;
    private final IsoTime isoTime = new IsoTime();
    private final RowText slow;
    private final Row row = new Row();

    private final byte[] buffer = new byte[BUFFER + 1];
    private int position;
    private int limit;
    private boolean ended;
    private long line = 1;
    private long nextLine = 1;
    private Supplier<String> reason = RowReader::bytes;
    private int fewestDecimals = Integer.MAX_VALUE;
    private int lastDecimals;
    private boolean thisSensor = true;
    private boolean semicolonSeen;
    private boolean semicolonUsual;

    RowReader(InputStream in, String name, TablePlan plan) {
        this.in = in;
        this.name = name;
        this.separator = plan.separator();
        this.cells = plan.cells();
        this.iso = plan.time().unit() == Unit.ISO_8601;
        this.sensor = plan.sensor().getBytes(java.nio.charset.StandardCharsets.UTF_8);
        this.plain = separator != plan.decimal() && separator != ' ';
        this.numbers = new NumberScanner(plan.decimal());
        this.roles = new byte[plan.lastColumn() + 1];
        Arrays.fill(roles, SKIP);
        if (plan.time().column() >= 0) {
            roles[plan.time().column()] = TIME;
        }
        if (plan.sensorColumn() >= 0) {
            roles[plan.sensorColumn()] = SENSOR;
        }
        this.largest = new double[6];
        for (int c = 0; c < 3; c++) {
            roles[plan.acceleration().columns().get(c)] = (byte) c;
            roles[plan.turnRate().columns().get(c)] = (byte) (3 + c);
            largest[c] = Math.abs(Absurd.ACCELERATION / plan.acceleration().toSi());
            largest[3 + c] = Math.abs(Absurd.TURN_RATE / plan.turnRate().toSi());
        }
        this.slow = new RowText(plan);
    }

    /** The numbers of the last row that was good. */
    Row row() {
        return row;
    }

    /** The line of the file on which the last row starts, from 1. */
    long line() {
        return line;
    }

    /** Why the last row was bad, as the end of a sentence; put into words when asked. */
    Supplier<String> reason() {
        return reason;
    }

    /** Passes over lines that are no rows. */
    void skipLines(int count) throws IOException {
        for (int i = 0; i < count && hasMore(); i++) {
            int p = position;
            while (buffer[p] != '\n' && buffer[p] != '\r') {
                p++;
            }
            lineEnd(p);
        }
    }

    /**
     * Reads the next row.
     *
     * @throws UnusableInputException if it is longer than a row can be
     */
    Outcome next() throws IOException {
        if (!hasMore()) {
            return Outcome.END;
        }
        line = nextLine;
        if (plain) {
            int end = numbers(position);
            if (end >= 0) {
                boolean unfinished = end == limit && cutShort();
                lineEnd(end);
                fewestDecimals = Math.min(fewestDecimals, lastDecimals);
                semicolonUsual = semicolonSeen;
                return unfinished ? Outcome.HALF_WRITTEN : thisSensor ? Outcome.ROW : Outcome.SKIPPED;
            }
        }
        int erased = erased(buffer, position, limit);
        return erased < 0 ? text() : skipErased(erased);
    }

    /** Where in a line zero bytes or erased memory begin, as a power cut leaves them; -1 if nowhere. */
    static int erased(byte[] bytes, int start, int limit) {
        for (int p = start; p < limit && bytes[p] != '\n' && bytes[p] != '\r'; p++) {
            if (isErased(bytes[p])) {
                return p;
            }
        }
        return -1;
    }

    private static String bytes() {
        return WORDS.say("bad.bytes");
    }

    private static boolean isErased(byte b) {
        return b == 0 || b == (byte) 0xFF;
    }

    private Outcome skipErased(int start) throws IOException {
        position = start;
        while (hasMore() && isErased(buffer[position])) {
            position++;
        }
        if (position >= limit) {
            return Outcome.HALF_WRITTEN;
        }
        int end = Cells.lineEnd(buffer, position, limit);
        lineEnd(end);
        reason = RowReader::bytes;
        return Outcome.BAD;
    }

    private boolean cutShort() {
        boolean fewer = fewestDecimals != Integer.MAX_VALUE && lastDecimals < fewestDecimals;
        return (roles.length == cells && fewer) || (semicolonUsual && !semicolonSeen);
    }

    private Outcome text() throws IOException {
        int start = position;
        int end = slow.read(buffer, position, limit, row);
        boolean unterminated = end >= limit;
        if (unterminated && !ended) {
            lineEnd(end);
        }
        lineEnd(end);
        nextLine += slow.innerLines();
        reason = slow.reason();
        Outcome outcome = slow.outcome();
        if (unterminated && outcome == Outcome.BAD && end > start) {
            return Outcome.HALF_WRITTEN;
        }
        return outcome;
    }

    private boolean hasMore() throws IOException {
        if (limit - position <= LONGEST_ROW && !ended) {
            fill();
        }
        return position < limit;
    }

    private void fill() throws IOException {
        System.arraycopy(buffer, position, buffer, 0, limit - position);
        limit -= position;
        position = 0;
        while (limit < BUFFER && !ended) {
            int n = in.read(buffer, limit, BUFFER - limit);
            if (n < 0) {
                ended = true;
            } else {
                limit += n;
            }
        }
        buffer[limit] = '\n';
    }

    /** Goes on behind the line end at {@code end}; CR, LF and CR LF are each one line end. */
    private void lineEnd(int end) {
        if ((end >= limit && !ended) || end - position > LONGEST_ROW) {
            throw tooLong(name, nextLine);
        }
        int p = end;
        if (p < limit) {
            p++;
            if (buffer[p - 1] == '\r' && p < limit && buffer[p] == '\n') {
                p++;
            }
        }
        position = p;
        nextLine++;
    }

    /** A refusal of a line that is longer than a row can be. */
    static UnusableInputException tooLong(String name, long line) {
        return new UnusableInputException(
                WORDS.say("row.long", name, String.valueOf(LONGEST_ROW), String.valueOf(line)));
    }

    /** Reads a row of numbers from {@code p}; returns where its line ends, or -1 if it is not that plain. */
    private int numbers(int p) {
        byte[] b = buffer;
        int n = roles.length;
        thisSensor = true;
        for (int c = 0; c < n; c++) {
            byte role = roles[c];
            if (role == SKIP) {
                p = skip(b, p);
            } else if (role == SENSOR) {
                int start = p;
                p = skip(b, p);
                thisSensor = p >= 0 && same(b, start, p);
            } else if (role == TIME && iso) {
                p = quoted(b, p, true);
                row.nanos = isoTime.nanos();
            } else {
                p = quoted(b, p, false);
                double value = numbers.value();
                if (role == TIME) {
                    row.time = value;
                } else {
                    row.values[role] = value;
                    if (!(Math.abs(value) <= largest[role])) {
                        return -1;
                    }
                }
            }
            if (p < 0) {
                return -1;
            }
            if (c + 1 < n) {
                if (b[p] != separator) {
                    return -1;
                }
                p++;
            }
        }
        lastDecimals = numbers.decimals();
        semicolonSeen = false;
        return rest(b, p, n);
    }

    /** Counts the cells that nobody needs, up to the end of the line. */
    private int rest(byte[] b, int start, int before) {
        int p = start;
        int count = before;
        byte c = b[p];
        while (c != '\n' && c != '\r') {
            if (c == separator) {
                count++;
            } else if (c == '"' || (count == before && c != ' ' && c != ';')) {
                return -1;
            }
            semicolonSeen = c == ';';
            c = b[++p];
        }
        return count == cells ? p : -1;
    }

    private int quoted(byte[] b, int start, boolean date) {
        int p = start;
        boolean quote = b[p] == '"';
        if (quote) {
            p++;
        }
        p = date ? isoTime.scan(b, p) : numbers.scan(b, p);
        if (p < 0 || !quote) {
            return p;
        }
        return b[p] == '"' ? p + 1 : -1;
    }

    private int skip(byte[] b, int start) {
        int p = start;
        if (b[p] == '"') {
            p++;
            while (b[p] != '"') {
                if (b[p] == '\n' || b[p] == '\r') {
                    return -1;
                }
                p++;
            }
            return p + 1;
        }
        while (b[p] != separator && b[p] != '\n' && b[p] != '\r') {
            p++;
        }
        return p;
    }

    private boolean same(byte[] b, int start, int end) {
        int from = start;
        int to = end;
        while (from < to && (b[from] == ' ' || b[from] == '"')) {
            from++;
        }
        while (to > from && (b[to - 1] == ' ' || b[to - 1] == '"')) {
            to--;
        }
        return Arrays.equals(b, from, to, sensor, 0, sensor.length);
    }
}
