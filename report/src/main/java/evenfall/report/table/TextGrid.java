package evenfall.report.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Lines up cells in columns as wide as their widest cell, with free lines between rows. */
public final class TextGrid {

    private static final String GAP = "  ";

    private final List<Object> lines = new ArrayList<>();

    /** Adds a row of cells. */
    public TextGrid row(String... cells) {
        lines.add(List.of(cells));
        return this;
    }

    /** Adds a line that spans all columns. */
    public TextGrid line(String text) {
        lines.add(text);
        return this;
    }

    /** Writes all lines, each ended by LF, without blanks at their ends. */
    public void write(Appendable out) throws IOException {
        int[] widths = widths();
        for (Object line : lines) {
            StringBuilder text = new StringBuilder();
            if (line instanceof List<?> cells) {
                for (int c = 0; c < cells.size(); c++) {
                    String cell = cells.get(c).toString();
                    text.append(cell)
                            .append(" ".repeat(widths[c] - length(cell)))
                            .append(GAP);
                }
            } else {
                text.append(line);
            }
            out.append(text.toString().stripTrailing()).append('\n');
        }
    }

    private int[] widths() {
        int[] widths = new int[0];
        for (Object line : lines) {
            if (line instanceof List<?> cells) {
                if (cells.size() > widths.length) {
                    widths = Arrays.copyOf(widths, cells.size());
                }
                for (int c = 0; c < cells.size(); c++) {
                    widths[c] = Math.max(widths[c], length(cells.get(c).toString()));
                }
            }
        }
        return widths;
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
