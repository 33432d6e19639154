/**
 * What sensors say on a line or a port, sample by sample: the text form, one line a sample, with its checksum. Pure
 * functions of bytes, no ports. Enter at {@link evenfall.ingest.wire.LineDecoder} to read and
 * {@link evenfall.ingest.wire.LineWriter} to write; {@link evenfall.ingest.wire.WireStreams} collects what was read.
 */
@NullMarked
package evenfall.ingest.wire;

import org.jspecify.annotations.NullMarked;
