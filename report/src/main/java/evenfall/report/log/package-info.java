/**
 * The training log: a folder the user owns, one folder an athlete, one a session; raw streams as they came, JSON beside
 * them, results apart. Entry is {@link evenfall.report.log.TrainingLog}.
 *
 * <p>Nothing is overwritten but results, which can be made again: what people enter is added as numbered files, raw
 * recordings are written once. Every file appears whole or not at all.
 */
@NullMarked
package evenfall.report.log;

import org.jspecify.annotations.NullMarked;
