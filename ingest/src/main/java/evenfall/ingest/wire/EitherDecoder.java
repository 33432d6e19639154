package evenfall.ingest.wire;

/**
 * Reads what a port sends in either form of the wire, recognised by itself: the one spoken is the one in which something
 * was last read whole. Bytes go to both readers, so that a port may change over at any moment and the same bytes read the
 * same however they were cut; text holds no 0 and frames hold no lines, so no sample is given twice, and what the other
 * form makes of the bytes is not counted.
 */
public final class EitherDecoder implements WireDecoder {

    private final WireTally lineTally = new WireTally();
    private final WireTally frameTally = new WireTally();
    private final LineDecoder lines;
    private final FrameDecoder frames;

    /** A decoder that hands samples to {@code receiver}. */
    public EitherDecoder(WireReceiver receiver) {
        this(receiver, FrameDecoder.HELD);
    }

    /** A decoder that holds so many samples of a sensor until its first hello, in the binary form. */
    public EitherDecoder(WireReceiver receiver, int hold) {
        WireTally.oppose(lineTally, frameTally);
        this.lines = new LineDecoder(receiver, lineTally);
        this.frames = new FrameDecoder(receiver, hold, frameTally);
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        int start = from;
        for (int i = from; i < to; i++) {
            // What either reader counts depends on what the other has read before, so both go from end to end together.
            if (bytes[i] == 0 || bytes[i] == '\n' || bytes[i] == '\r' || i == to - 1) {
                lines.accept(bytes, start, i + 1);
                frames.accept(bytes, start, i + 1);
                start = i + 1;
            }
        }
    }

    /** Whether anything of a sensor was ever read whole, also samples that still wait for a hello. */
    public boolean heard() {
        return lineTally.everHeard() || frameTally.everHeard();
    }

    @Override
    public void end() {
        lines.end();
        frames.end();
    }

    @Override
    public WireCounts counts() {
        return WireTally.both(lineTally, frameTally);
    }
}
