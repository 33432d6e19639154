package evenfall.report.csv;

import java.util.List;

/**
 * One row of a table.
 *
 * @param line the line of the file it begins on, from 1
 * @param cells its cells, unquoted
 */
public record CsvRow(int line, List<String> cells) {

    public CsvRow {
        cells = List.copyOf(cells);
    }
}
