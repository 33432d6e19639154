package evenfall.report.html.view;

import java.util.List;

/**
 * Columns of the table that answer one question.
 *
 * @param question the question
 * @param columns their heads
 */
public record ColumnGroup(String question, List<String> columns) {}
