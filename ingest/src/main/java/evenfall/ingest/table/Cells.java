package evenfall.ingest.table;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** Lines and cells in bytes. */
final class Cells {

    private Cells() {}

    /** Where the line that holds {@code start} ends: at a line feed, a carriage return or {@code limit}. */
    static int lineEnd(byte[] bytes, int start, int limit) {
        int p = start;
        while (p < limit && bytes[p] != '\n' && bytes[p] != '\r') {
            p++;
        }
        return p;
    }

    /** Whether a line holds nothing, or a comment: {@code #}, {@code %} or {@code //} before anything else. */
    static boolean blankOrComment(byte[] bytes, int start, int end) {
        int p = start;
        while (p < end && (bytes[p] == ' ' || bytes[p] == '\t' || bytes[p] == '\f')) {
            p++;
        }
        return p == end
                || bytes[p] == '#'
                || bytes[p] == '%'
                || (bytes[p] == '/' && p + 1 < end && bytes[p + 1] == '/');
    }

    /**
     * Splits a row into cells after RFC 4180: a cell in quotation marks may hold separators, line ends and doubled
     * quotation marks. A separator of a space stands for any run of spaces.
     *
     * @param into is emptied and filled
     * @return where the row ends, or -1 if a quotation mark is not closed before {@code limit}
     */
    static int split(byte[] bytes, int start, int limit, byte separator, List<String> into) {
        into.clear();
        int p = start;
        while (true) {
            while (p < limit && bytes[p] == ' ') {
                p++;
            }
            if (separator == ' ' && (p == limit || bytes[p] == '\n' || bytes[p] == '\r')) {
                return p;
            }
            if (p < limit && bytes[p] == '"') {
                p = quotedCell(bytes, p + 1, limit, separator, into);
                if (p < 0) {
                    return -1;
                }
            } else {
                int from = p;
                while (p < limit && bytes[p] != separator && bytes[p] != '\n' && bytes[p] != '\r') {
                    p++;
                }
                into.add(text(bytes, from, p));
            }
            if (p >= limit || bytes[p] != separator) {
                return p;
            }
            p++;
        }
    }

    private static int quotedCell(byte[] bytes, int start, int limit, byte separator, List<String> into) {
        StringBuilder cell = new StringBuilder();
        int from = start;
        int p = start;
        while (p < limit) {
            if (bytes[p] == '"') {
                cell.append(text(bytes, from, p));
                p++;
                if (p < limit && bytes[p] == '"') {
                    from = p;
                    p++;
                    continue;
                }
                // What stands between the closing mark and the separator belongs to the cell as it stands.
                int rest = p;
                while (p < limit && bytes[p] != separator && bytes[p] != '\n' && bytes[p] != '\r') {
                    p++;
                }
                into.add(cell.append(text(bytes, rest, p)).toString());
                return p;
            }
            p++;
        }
        return -1;
    }

    private static String text(byte[] bytes, int from, int to) {
        return new String(bytes, from, to - from, StandardCharsets.UTF_8);
    }
}
