package evenfall.ingest.wire;

/**
 * Reads what one port sends: bytes in as they come, cut anywhere, samples out to a {@link WireReceiver}, in memory that
 * does not grow, whatever comes. Not safe for use from several threads.
 */
public interface WireDecoder {

    /** Takes {@code bytes[from..to)}, cut anywhere. */
    void accept(byte[] bytes, int from, int to);

    /** The bytes have come to their end: gives what can still be given. */
    void end();

    /** What became of the bytes so far. */
    WireCounts counts();
}
