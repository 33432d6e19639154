/** Remarks on the quality of a recording: what is wrong or doubtful, how bad, in which sensor and when. */
@NullMarked
package evenfall.ingest.finding;

import org.jspecify.annotations.NullMarked;
