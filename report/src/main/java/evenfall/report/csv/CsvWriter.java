package evenfall.report.csv;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/**
 * Writes rows of cells after RFC 4180: CRLF at the end, quotes where a cell needs them.
 *
 * <p>Text that a spreadsheet would take for a formula is given a leading apostrophe, so that opening a table never runs
 * anything a person typed as a remark. Numbers are written as they are.
 */
public final class CsvWriter {

    /** What text must not begin with, the wide signs of East Asian keyboards included (OWASP, CSV injection). */
    private static final String FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private final Appendable out;
    private final CsvStyle style;
    private boolean begun;
    private boolean rowStarted;

    /** A writer that appends to {@code out} and never closes it. */
    public CsvWriter(Appendable out, CsvStyle style) {
        this.out = out;
        this.style = style;
    }

    /** Adds a text cell; an empty one for null. */
    public CsvWriter text(@Nullable String text) throws IOException {
        return cell(text == null ? "" : guarded(text));
    }

    /** Adds a number cell, six decimals at most; an empty one for null and for what is not finite. */
    public CsvWriter number(@Nullable Double value) throws IOException {
        return cell(
                value == null || !Double.isFinite(value)
                        ? ""
                        : PlainNumber.of(value).replace('.', style.decimal()));
    }

    /** Ends the row. */
    public CsvWriter end() throws IOException {
        out.append("\r\n");
        rowStarted = false;
        return this;
    }

    private CsvWriter cell(String cell) throws IOException {
        if (!begun) {
            out.append(style.begin());
        }
        begun = true;
        if (rowStarted) {
            out.append(style.separator());
        }
        rowStarted = true;
        if (cell.indexOf(style.separator()) < 0
                && cell.indexOf('"') < 0
                && cell.indexOf('\n') < 0
                && cell.indexOf('\r') < 0) {
            out.append(cell);
        } else {
            out.append('"').append(cell.replace("\"", "\"\"")).append('"');
        }
        return this;
    }

    private static String guarded(String text) {
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
