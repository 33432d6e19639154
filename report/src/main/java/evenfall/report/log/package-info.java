/**
 * The training log: a folder the user owns, one folder an athlete, one a session; raw streams as they came, JSON beside
 * them, results apart.
 */
@NullMarked
package evenfall.report.log;

import org.jspecify.annotations.NullMarked;
