/**
 * A session as tables: {@link evenfall.report.table.SessionCsv} for spreadsheets and programs, {@link
 * evenfall.report.table.SessionText} for a person at a terminal.
 */
@NullMarked
package evenfall.report.table;

import org.jspecify.annotations.NullMarked;
