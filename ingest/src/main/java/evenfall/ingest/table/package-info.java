/**
 * Table files (CSV and kin) to recordings: finds out what a file is by its bytes, reads its header or takes a layout file,
 * converts to SI, and leaves out and names what it cannot read.
 *
 * <p>Enter at {@link evenfall.ingest.table.RecordingFiles}.
 */
@NullMarked
package evenfall.ingest.table;

import org.jspecify.annotations.NullMarked;
