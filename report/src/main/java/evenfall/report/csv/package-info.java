/**
 * Comma-separated tables (RFC 4180) as they are written for spreadsheets and read back as notes and tidy tables: {@link
 * evenfall.report.csv.CsvWriter} and {@link evenfall.report.csv.CsvTable}.
 */
@NullMarked
package evenfall.report.csv;

import org.jspecify.annotations.NullMarked;
