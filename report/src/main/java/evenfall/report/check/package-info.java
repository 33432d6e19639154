/**
 * What is wrong or doubtful about recorded files, before anybody measures by them. Entry is
 * {@link evenfall.report.check.FileChecks}.
 */
@NullMarked
package evenfall.report.check;

import org.jspecify.annotations.NullMarked;
