/**
 * Form: the four questions a landing is judged by, their limits, and the verdict with its reasons in words.
 */
@NullMarked
package evenfall.report.form;

import org.jspecify.annotations.NullMarked;
