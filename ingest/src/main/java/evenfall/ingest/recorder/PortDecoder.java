package evenfall.ingest.recorder;

import evenfall.ingest.wire.EitherDecoder;
import evenfall.ingest.wire.SensorId;
import evenfall.ingest.wire.WireCounts;
import evenfall.ingest.wire.WireDecoder;
import evenfall.ingest.wire.WireReceiver;
import java.util.ArrayList;
import java.util.List;

/**
 * From the bytes of one port and their arrival to samples: the same while they come and when they are read back. What
 * comes before and after a loss of the port is never read as one line.
 */
final class PortDecoder {

    private final SensorClocks clocks;
    private final List<Double> lossS = new ArrayList<>();
    private final WireDecoder decoder;

    /**
     * Hands samples to {@code receiver}.
     *
     * @param hold so many samples of a sensor wait until it first says what it is
     */
    PortDecoder(WireReceiver receiver, int hold) {
        this.clocks = new SensorClocks(receiver);
        this.decoder = new EitherDecoder(clocks, hold);
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
        clocks.gone(atS);
        lossS.add(clocks.last(SensorId.PELVIS));
    }

    void end() {
        decoder.end();
    }

    WireCounts counts() {
        return decoder.counts();
    }

    /** The pelvis sensor's time at each loss of the port, s; NaN where it had not spoken on this port. */
    List<Double> losses() {
        return List.copyOf(lossS);
    }

    List<SensorClocks.NewStart> newStarts() {
        return clocks.newStarts();
    }
}
