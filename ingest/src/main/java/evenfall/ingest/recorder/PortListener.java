package evenfall.ingest.recorder;

import evenfall.ingest.wire.FrameDecoder;
import evenfall.ingest.wire.WireCounts;
import evenfall.ingest.wire.WireReceiver;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * Decodes what came from one port in a thread of its own, so that reading the port never waits for those who look on: a
 * line holds no more than a few hundredths of a second for a reader that is late.
 */
final class PortListener implements Runnable {

    /** A flood that is faster than decoding waits behind so many bytes. */
    private static final int MOST = 1 << 22;

    private final WireReceiver receiver;
    private final PortDecoder decoder;
    private final BlockingQueue<Piece> pieces = new LinkedBlockingQueue<>();
    private final Semaphore room = new Semaphore(MOST);
    private volatile @Nullable Throwable deafness;

    /** Hands samples to {@code receiver}, which is also the lock under which that happens. */
    PortListener(WireReceiver receiver) {
        this.receiver = receiver;
        this.decoder = new PortDecoder(receiver, FrameDecoder.HELD);
    }

    private enum Kind {
        BYTES,
        GONE,
        END
    }

    /** Something to be told. */
    private static final class Piece {

        private final Kind kind;
        private final double atS;
        private final byte[] bytes;

        /** Something that happened at {@code atS}, s since the epoch; NaN if that was not noted. */
        Piece(Kind kind, double atS, byte[] bytes) {
            this.kind = kind;
            this.atS = atS;
            this.bytes = bytes;
        }
    }

    /** Takes a copy of {@code buffer[0..count)} that arrived at {@code atS}, NaN if that was not noted. */
    void hear(byte[] buffer, int count, double atS) {
        room.acquireUninterruptibly(count);
        pieces.add(new Piece(Kind.BYTES, atS, Arrays.copyOf(buffer, count)));
    }

    /** The port was lost. */
    void gone(double atS) {
        pieces.add(new Piece(Kind.GONE, atS, new byte[0]));
    }

    /** Nothing more comes; the thread ends when it has decoded what came. */
    void end() {
        pieces.add(new Piece(Kind.END, Double.NaN, new byte[0]));
    }

    /** What decodes; to be asked under the lock of the receiver. */
    PortDecoder decoder() {
        return decoder;
    }

    WireCounts counts() {
        synchronized (receiver) {
            return decoder.counts();
        }
    }

    /** Why nothing is decoded any more, if that is so. */
    Optional<Throwable> deafness() {
        return Optional.ofNullable(deafness);
    }

    @Override
    public void run() {
        try {
            Kind kind = Kind.BYTES;
            while (kind != Kind.END) {
                Piece piece = pieces.take();
                kind = piece.kind;
                decode(piece);
                room.release(piece.bytes.length);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whatever goes wrong in decoding, want of memory not excepted, the bytes are kept all the same. */
    private void decode(Piece piece) {
        if (deafness != null) {
            return;
        }
        try {
            synchronized (receiver) {
                switch (piece.kind) {
                    case BYTES -> accept(piece);
                    case GONE -> decoder.gone(piece.atS);
                    case END -> decoder.end();
                }
            }
        } catch (RuntimeException | OutOfMemoryError e) {
            deafness = e;
        }
    }

    private void accept(Piece piece) {
        if (!Double.isNaN(piece.atS)) {
            decoder.arrived(piece.atS);
        }
        decoder.accept(piece.bytes, 0, piece.bytes.length);
    }
}
