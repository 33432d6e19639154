/**
 * What people see and keep: the training log, tables, charts, pages and the command line.
 */
@NullMarked
package evenfall.report;

import org.jspecify.annotations.NullMarked;
