package evenfall.report.csv;

import evenfall.ingest.recording.UnusableInputException;
import java.util.ArrayList;
import java.util.List;

/** Splits text into rows and cells; the first line that is no comment decides the separator. */
final class CsvSplitter {

    private final String source;
    private final String text;
    private final char separator;
    private int at;
    private int line = 1;

    CsvSplitter(String source, String text) {
        this.source = source;
        this.text = text;
        this.separator = separatorOf(text);
    }

    List<CsvRow> rows() {
        List<CsvRow> rows = new ArrayList<>();
        while (at < text.length()) {
            int start = line;
            boolean comment = text.charAt(at) == '#';
            if (comment) {
                skipLine();
                continue;
            }
            List<String> cells = cells();
            if (cells.size() > 1 || !cells.get(0).isBlank()) {
                rows.add(new CsvRow(start, cells));
            }
        }
        return rows;
    }

    private List<String> cells() {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '"' && cell.toString().isBlank()) {
                cell.setLength(0);
                quoted(cell);
            } else if (c == separator) {
                at++;
                cells.add(cell.toString());
                cell.setLength(0);
            } else if (c == '\n' || c == '\r') {
                endLine();
                break;
            } else {
                cell.append(c);
                at++;
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    private void quoted(StringBuilder cell) {
        int start = line;
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c != '"') {
                if (c == '\n') {
                    line++;
                }
                cell.append(c);
            } else if (at < text.length() && text.charAt(at) == '"') {
                cell.append('"');
                at++;
            } else {
                return;
            }
        }
        throw new UnusableInputException(
                source + " has a quote in line " + start + " that never ends; close it or leave it out.");
    }

    private void skipLine() {
        while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at++;
        }
        if (at < text.length()) {
            endLine();
        }
    }

    private void endLine() {
        if (text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n') {
            at++;
        }
        at++;
        line++;
    }

    private static char separatorOf(String text) {
        String header = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        for (char candidate : new char[] {'\t', ';'}) {
            if (header.indexOf(candidate) >= 0) {
                return candidate;
            }
        }
        return ',';
    }
}
