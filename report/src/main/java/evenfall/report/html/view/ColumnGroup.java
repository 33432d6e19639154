package evenfall.report.html.view;

import java.util.List;

/**
 * Columns of the table that answer one question.
 *
 * @param question the question
 * @param columns their heads
 */
public record ColumnGroup(String question, List<Column> columns) {

    /**
     * The head of a column.
     *
     * @param label what it shows
     * @param term end of the id of its explanation
     * @param limit its limit in words where all landings have the same, or empty
     */
    public record Column(String label, String term, String limit) {}
}
