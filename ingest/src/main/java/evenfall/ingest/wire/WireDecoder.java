package evenfall.ingest.wire;

/**
 * Reads what one port sends: bytes in as they come, cut anywhere, samples out to a {@link WireReceiver}, in memory that
 * does not grow, whatever comes. Not safe for use from several threads.
 */
public interface WireDecoder {

    /** Takes {@code bytes[from..to)}, cut anywhere. */
    void accept(byte[] bytes, int from, int to);

    /**
     * The bytes have come to an end: gives what can still be given. More may follow, after a loss of the port say; they
     * are not read as one line or frame with what came before, and what is known of the sensors stays known.
     */
    void end();

    /** What became of the bytes so far. */
    WireCounts counts();
}
