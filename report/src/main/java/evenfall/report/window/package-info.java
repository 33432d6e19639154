/**
 * The coach's window: a thin skin over {@link evenfall.report.round.Day}, which decides everything. Enter at
 * {@link evenfall.report.window.CoachWindow}.
 */
@NullMarked
package evenfall.report.window;

import org.jspecify.annotations.NullMarked;
