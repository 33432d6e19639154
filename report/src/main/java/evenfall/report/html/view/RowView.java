package evenfall.report.html.view;

import java.util.List;

/** One row of a table: its head and its cells. */
public record RowView(String head, List<String> cells) {}
