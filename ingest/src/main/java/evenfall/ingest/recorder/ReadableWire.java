package evenfall.ingest.recorder;

import evenfall.ingest.serial.SpeedJudge;
import evenfall.ingest.wire.EitherDecoder;

/** Knows the right speed by the first sample or hello that can be read. */
public final class ReadableWire implements SpeedJudge {

    private final EitherDecoder decoder = new EitherDecoder((sensor, t, ax, ay, az, gx, gy, gz) -> {});

    @Override
    public boolean readable(byte[] bytes, int count) {
        decoder.accept(bytes, 0, count);
        return decoder.heard();
    }
}
