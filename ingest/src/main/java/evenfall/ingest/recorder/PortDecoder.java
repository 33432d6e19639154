package evenfall.ingest.recorder;

import evenfall.ingest.wire.EitherDecoder;
import evenfall.ingest.wire.WireCounts;
import evenfall.ingest.wire.WireDecoder;
import evenfall.ingest.wire.WireReceiver;
import java.util.List;

/**
 * From the bytes of one port and their arrival to samples: the same while they come and when they are read back. What
 * comes before and after a loss of the port is never read as one line.
 */
final class PortDecoder {

    private final SensorClocks clocks;
    private WireDecoder decoder;
    private WireCounts before = WireCounts.NONE;

    /** Hands samples to {@code receiver}. */
    PortDecoder(WireReceiver receiver) {
        this.clocks = new SensorClocks(receiver);
        this.decoder = new EitherDecoder(clocks);
    }

    /** The bytes that follow arrived at this moment, s since the epoch. */
    void arrived(double atS) {
        clocks.arrived(atS);
    }

    void accept(byte[] bytes, int from, int to) {
        decoder.accept(bytes, from, to);
    }

    /** The port was lost at this moment, s since the epoch. */
    void gone(double atS) {
        end();
        before = before.plus(decoder.counts());
        decoder = new EitherDecoder(clocks);
        clocks.gone(atS);
    }

    void end() {
        decoder.end();
    }

    WireCounts counts() {
        return before.plus(decoder.counts());
    }

    List<SensorClocks.NewStart> newStarts() {
        return clocks.newStarts();
    }
}
