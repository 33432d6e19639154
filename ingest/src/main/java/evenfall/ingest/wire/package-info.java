/**
 * What sensors say on a line or a port, sample by sample, in two forms: text, one line a sample, and frames of bytes with
 * numbers that count up. Pure functions of bytes, no ports. Enter at {@link evenfall.ingest.wire.EitherDecoder} to read
 * and at {@link evenfall.ingest.wire.LineWriter} or {@link evenfall.ingest.wire.FrameWriter} to write;
 * {@link evenfall.ingest.wire.WireStreams} collects what was read, by sensor and by place.
 */
@NullMarked
package evenfall.ingest.wire;

import org.jspecify.annotations.NullMarked;
