package evenfall.ingest.wire;

import evenfall.ingest.place.Place;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Writes frames of the binary form of the wire, stuffed and ended by 0. */
public final class FrameWriter {

    private FrameWriter() {}

    /**
     * The frame of one sample.
     *
     * @param sensor the sensor's number
     * @param sequence samples of this sensor before this one, sent or not; its lowest 16 bits go out
     * @param clockUs the sensor's own clock, µs; its lowest 32 bits go out
     * @param counts what the sensor's registers said: force along x, y, z, turn rate about x, y, z
     */
    public static byte[] sample(int sensor, long sequence, long clockUs, short[] counts) {
        ByteBuffer frame = begin(FrameLayout.SAMPLE, sensor, FrameLayout.SAMPLE_END);
        frame.putShort((short) sequence).putInt((int) clockUs);
        for (int i = 0; i < 6; i++) {
            frame.putShort(counts[i]);
        }
        return end(frame);
    }

    /**
     * The frame in which a sensor tells about itself.
     *
     * @param clockUs the sensor's own clock now, µs, all of it
     */
    public static byte[] hello(Hello hello, long clockUs) {
        byte[] name = hello.name().getBytes(StandardCharsets.UTF_8);
        Place place = hello.place();
        int code = FrameLayout.PLACE_UNKNOWN;
        if (place != null) {
            code = place == Place.PELVIS ? FrameLayout.PLACE_PELVIS : FrameLayout.PLACE_UPPER_BACK;
        }
        ByteBuffer frame = begin(FrameLayout.HELLO, hello.sensor(), FrameLayout.HELLO_NAME + name.length);
        frame.putLong(clockUs)
                .put((byte) code)
                .putFloat(hello.accelerationScale())
                .putFloat(hello.turnRateScale())
                .putFloat(hello.accelerationRange())
                .putFloat(hello.turnRateRange())
                .putFloat(hello.rateHz())
                .put((byte) name.length)
                .put(name);
        return end(frame);
    }

    private static ByteBuffer begin(int kind, int sensor, int length) {
        return ByteBuffer.allocate(length)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put((byte) kind)
                .putShort((short) sensor);
    }

    private static byte[] end(ByteBuffer frame) {
        int end = frame.position();
        byte[] plain = new byte[end + FrameLayout.CHECKSUM];
        frame.flip();
        frame.get(plain, 0, end);
        int crc = Crc16.of(plain, 0, end);
        plain[end] = (byte) (crc >> 8);
        plain[end + 1] = (byte) crc;
        byte[] stuffed = new byte[Cobs.longest(plain.length) + 1];
        int length = Cobs.encode(plain, plain.length, stuffed);
        return Arrays.copyOf(stuffed, length + 1);
    }
}
