package evenfall.report.csv;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A small table with a header, held in memory: notes and tidy tables, not recordings.
 *
 * <p>Comma, semicolon or tab as the header shows; quotes after RFC 4180; LF, CRLF or CR; a byte order mark, blank lines
 * and lines that begin with {@code #} are passed over. Column names are compared without case and surrounding blanks.
 */
public final class CsvTable {

    private static final Words WORDS = Words.beside(CsvTable.class);

    private final String source;
    private final Map<String, Integer> columns;
    private final List<String> names;
    private final List<CsvRow> rows;

    private CsvTable(String source, List<String> names, Map<String, Integer> columns, List<CsvRow> rows) {
        this.source = source;
        this.names = List.copyOf(names);
        this.columns = columns;
        this.rows = List.copyOf(rows);
    }

    /**
     * Reads a table.
     *
     * @param source what to call it in a sentence, such as its file's name
     * @throws UnusableInputException if there is no header, a column is named twice, a quote never ends, or a row has
     *     more cells than the header
     */
    public static CsvTable read(String source, String text) {
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<CsvRow> lines = new CsvSplitter(source, body).rows();
        if (lines.isEmpty()) {
            throw new UnusableInputException(WORDS.say("empty", source));
        }
        List<String> names = lines.get(0).cells().stream().map(String::strip).toList();
        Map<String, Integer> columns = new LinkedHashMap<>();
        for (int c = 0; c < names.size(); c++) {
            String name = names.get(c);
            if (!name.isEmpty() && columns.put(key(name), c) != null) {
                throw new UnusableInputException(WORDS.say("column.twice", source, name));
            }
        }
        List<CsvRow> rows = new ArrayList<>();
        for (CsvRow row : lines.subList(1, lines.size())) {
            for (int c = names.size(); c < row.cells().size(); c++) {
                if (!row.cells().get(c).isBlank()) {
                    throw new UnusableInputException(WORDS.say("row.long", source, row.line()));
                }
            }
            rows.add(row);
        }
        return new CsvTable(source, names, columns, rows);
    }

    /** What the table is called in a sentence. */
    public String source() {
        return source;
    }

    /** The column names as written. */
    public List<String> names() {
        return names;
    }

    /** The rows below the header, in order. */
    public List<CsvRow> rows() {
        return rows;
    }

    /** Whether there is a column of that name. */
    public boolean has(String name) {
        return columns.containsKey(key(name));
    }

    /** The stripped cell of a row under a name; empty where there is no such column or nothing in the cell. */
    public Optional<String> cell(CsvRow row, String name) {
        Integer c = columns.get(key(name));
        if (c == null || c >= row.cells().size()) {
            return Optional.empty();
        }
        String cell = row.cells().get(c).strip();
        return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
