/**
 * From files to results: {@link evenfall.report.result.RecordingInput} reads and analyses recordings, and results of
 * the training log are kept, and made again where they are missing or older than the program.
 */
@NullMarked
package evenfall.report.result;

import org.jspecify.annotations.NullMarked;
