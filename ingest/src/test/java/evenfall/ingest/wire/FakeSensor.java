package evenfall.ingest.wire;

import evenfall.ingest.place.Place;
import java.io.ByteArrayOutputStream;
import org.jspecify.annotations.Nullable;

/** A sensor of 200 Hz that writes frames; every frame can be sent or withheld. */
final class FakeSensor {

    static final int PERIOD_US = 5000;
    static final float G = 16f / 32768;
    static final float DEGREES = 2000f / 32768;

    private final int number;
    private final @Nullable Place place;
    private long sequence;
    private long clockUs;

    FakeSensor(int number, @Nullable Place place, long sequence, long clockUs) {
        this.number = number;
        this.place = place;
        this.sequence = sequence;
        this.clockUs = clockUs;
    }

    byte[] hello() {
        return FrameWriter.hello(
                new Hello(number, place, G, DEGREES, 16, 2000, 200, "fake " + SensorId.text(number)), clockUs);
    }

    /** The next sample; its counts say its number. */
    byte[] next() {
        short[] counts = {(short) sequence, 0, 2048, (short) (sequence % 7), 0, (short) -sequence};
        byte[] frame = FrameWriter.sample(number, sequence, clockUs, counts);
        skip(1);
        return frame;
    }

    byte[] next(int count) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < count; i++) {
            bytes.writeBytes(next());
        }
        return bytes.toByteArray();
    }

    /** Takes samples that nobody gets. */
    void skip(long count) {
        sequence += count;
        clockUs += count * PERIOD_US;
    }

    void startAnew() {
        sequence = 0;
        clockUs = 0;
    }

    double clockS() {
        return clockUs * 1e-6;
    }
}
