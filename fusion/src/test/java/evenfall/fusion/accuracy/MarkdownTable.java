package evenfall.fusion.accuracy;

import java.util.ArrayList;
import java.util.List;

/** A table as the page spells it. */
final class MarkdownTable {

    private final List<List<String>> rows = new ArrayList<>();

    MarkdownTable(List<String> head) {
        rows.add(List.copyOf(head));
        rows.add(head.stream().map(cell -> "---").toList());
    }

    void add(List<String> cells) {
        rows.add(List.copyOf(cells));
    }

    String text() {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            text.append("| ").append(String.join(" | ", row)).append(" |\n");
        }
        return text.toString();
    }

    /** Per cent without a fraction; empty for NaN. */
    static String percent(double value) {
        return Double.isNaN(value) ? "" : String.valueOf(Math.round(value));
    }
}
