/**
 * A coach's day with one pair of sensors that goes round several athletes: who is next, how they feel, whether the sensors sit,
 * the opening routine, the drops, looking back, and who still owes an answer. Knows nothing of windows. Enter at
 * {@link evenfall.report.round.Round}.
 */
@NullMarked
package evenfall.report.round;

import org.jspecify.annotations.NullMarked;
