package evenfall.ingest.recorder;

import evenfall.ingest.wire.WireCounts;

/**
 * What came from one port so far.
 *
 * @param there whether the port is there
 * @param bytes kept on disk
 * @param counts what became of them
 */
public record Heard(boolean there, long bytes, WireCounts counts) {}
