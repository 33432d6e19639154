package evenfall.report.paper;

import java.util.List;

/**
 * A table in words.
 *
 * @param head heads of the columns
 * @param rows cells of each row, as many as {@code head}; the first names the row
 * @param widths relative widths of the columns
 */
public record TableText(List<String> head, List<List<String>> rows, List<Double> widths) {

    public TableText {
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
        widths = List.copyOf(widths);
        int columns = head.size();
        if (widths.size() != columns || rows.stream().anyMatch(row -> row.size() != columns)) {
            throw new IllegalArgumentException("a table's rows, head and widths must agree: " + columns + " columns");
        }
    }
}
