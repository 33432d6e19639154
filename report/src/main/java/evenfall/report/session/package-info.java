/**
 * One session as tables and pages see it: the analysis, the verdicts, and what the coach noted.
 */
@NullMarked
package evenfall.report.session;

import org.jspecify.annotations.NullMarked;
