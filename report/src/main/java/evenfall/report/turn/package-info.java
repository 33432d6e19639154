/**
 * One athlete's turn with the sensors, whoever leads it: a session recorded into the log, what is told meanwhile, and its
 * analysis when it is over. Enter at {@link evenfall.report.turn.Turn}.
 */
@NullMarked
package evenfall.report.turn;

import org.jspecify.annotations.NullMarked;
