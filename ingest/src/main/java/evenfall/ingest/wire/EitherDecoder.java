package evenfall.ingest.wire;

/** Reads what a port sends in any form of the wire, recognised by itself. */
public final class EitherDecoder implements WireDecoder {

    private final LineDecoder lines;

    /** A decoder that hands samples to {@code receiver}. */
    public EitherDecoder(WireReceiver receiver) {
        this.lines = new LineDecoder(receiver);
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        lines.accept(bytes, from, to);
    }

    @Override
    public void end() {
        lines.end();
    }

    @Override
    public WireCounts counts() {
        return lines.counts();
    }
}
