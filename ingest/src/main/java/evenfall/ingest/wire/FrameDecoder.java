package evenfall.ingest.wire;

import evenfall.ingest.place.Place;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads the binary form of the wire: frames stuffed so that they hold no 0, ended by 0, with a checksum, the sensor's
 * number, and in samples a number that counts up. The form is told byte by byte in {@code docs/wire.md}.
 *
 * <p>Samples before a sensor's first hello are held, since their scale is not known, and given when it comes. Frames of
 * an unknown kind or version are passed over and counted apart. What stands before the first 0 may be half a frame and
 * is not held against the port.
 */
public final class FrameDecoder implements WireDecoder {

    /** Samples of a sensor that are held until its first hello: ten seconds at 400 Hz. */
    public static final int HELD = 4096;

    /** No sensor runs for so long, a thousand years: such a clock is damaged. */
    private static final long LATEST_US = 31_557_600_000_000_000L;

    private final WireReceiver receiver;
    private final WireTally tally;
    private final int hold;
    private final List<FrameSensor> sensors = new ArrayList<>();
    private final byte[] frame = new byte[FrameLayout.LONGEST];
    private final ByteBuffer fields = ByteBuffer.wrap(frame).order(ByteOrder.LITTLE_ENDIAN);
    private final short[] counts = new short[6];
    private int length;
    private boolean tooLong;
    private boolean first = true;

    /** A decoder that hands samples to {@code receiver}. */
    public FrameDecoder(WireReceiver receiver) {
        this(receiver, HELD);
    }

    /** A decoder that holds so many samples of a sensor until its first hello, 20 bytes each. */
    public FrameDecoder(WireReceiver receiver, int hold) {
        this(receiver, hold, new WireTally());
    }

    FrameDecoder(WireReceiver receiver, int hold, WireTally tally) {
        this.receiver = receiver;
        this.hold = hold;
        this.tally = tally;
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            byte b = bytes[i];
            if (b == 0) {
                endFrame();
            } else if (length == FrameLayout.LONGEST) {
                tooLong = true;
            } else {
                frame[length++] = b;
            }
        }
    }

    /** The bytes have come to their end: what is left is a whole frame only if its checksum fits. */
    @Override
    public void end() {
        first = true;
        endFrame();
        first = true;
        for (FrameSensor sensor : sensors) {
            sensor.end();
        }
    }

    @Override
    public WireCounts counts() {
        return tally.counts();
    }

    private void endFrame() {
        int stuffed = length;
        boolean half = first;
        boolean rubbish = tooLong;
        length = 0;
        tooLong = false;
        first = false;
        if (stuffed == 0) {
            return;
        }
        int whole = rubbish ? -1 : Cobs.decode(frame, stuffed);
        int end = whole - FrameLayout.CHECKSUM;
        if (end > FrameLayout.SENSOR && Crc16.of(frame, 0, whole) == 0) {
            read(end);
        } else if (!half) {
            tally.damaged();
        }
    }

    /** Reads a frame whose checksum fits and whose last byte before that is at {@code end - 1}. */
    private void read(int end) {
        int kind = frame[0] & 0xFF;
        if (kind != FrameLayout.SAMPLE && kind != FrameLayout.HELLO) {
            tally.unknown();
            return;
        }
        FrameSensor sensor = end < FrameLayout.SAMPLE_SEQUENCE ? null : sensor(fields.getShort(1) & 0xFFFF);
        boolean read = sensor != null && (kind == FrameLayout.SAMPLE ? sample(sensor, end) : hello(sensor, end));
        if (!read) {
            tally.sure();
            tally.unreadable();
        }
    }

    private boolean sample(FrameSensor sensor, int end) {
        if (end != FrameLayout.SAMPLE_END) {
            return false;
        }
        for (int i = 0; i < 6; i++) {
            counts[i] = fields.getShort(FrameLayout.SAMPLE_COUNTS + 2 * i);
        }
        sensor.sample(
                fields.getShort(FrameLayout.SAMPLE_SEQUENCE) & 0xFFFF, fields.getInt(FrameLayout.SAMPLE_CLOCK), counts);
        return true;
    }

    /** What stands behind the name may be added by a later version of a sensor's program and is passed over. */
    private boolean hello(FrameSensor sensor, int end) {
        if (end < FrameLayout.HELLO_NAME) {
            return false;
        }
        float accelerationScale = fields.getFloat(FrameLayout.HELLO_ACCELERATION_SCALE);
        float turnRateScale = fields.getFloat(FrameLayout.HELLO_TURN_RATE_SCALE);
        float accelerationRange = fields.getFloat(FrameLayout.HELLO_ACCELERATION_RANGE);
        float turnRateRange = fields.getFloat(FrameLayout.HELLO_TURN_RATE_RANGE);
        float rateHz = fields.getFloat(FrameLayout.HELLO_RATE);
        long clockUs = fields.getLong(FrameLayout.HELLO_CLOCK);
        int name = frame[FrameLayout.HELLO_NAME_LENGTH] & 0xFF;
        if (name > Hello.LONGEST_NAME
                || FrameLayout.HELLO_NAME + name > end
                || clockUs < 0
                || clockUs > LATEST_US
                || !Hello.possible(accelerationScale, accelerationRange, turnRateScale, turnRateRange, rateHz)) {
            return false;
        }
        sensor.hello(
                new Hello(
                        sensor.sensor(),
                        place(frame[FrameLayout.HELLO_PLACE]),
                        accelerationScale,
                        turnRateScale,
                        accelerationRange,
                        turnRateRange,
                        rateHz,
                        name(name)),
                clockUs);
        return true;
    }

    /** The name; a character that is none becomes a mark of its own, which may take more bytes than it had. */
    private String name(int bytes) {
        String name = new String(frame, FrameLayout.HELLO_NAME, bytes, StandardCharsets.UTF_8);
        while (name.getBytes(StandardCharsets.UTF_8).length > Hello.LONGEST_NAME) {
            name = name.substring(0, name.offsetByCodePoints(name.length(), -1));
        }
        return name;
    }

    private static @Nullable Place place(byte code) {
        return switch (code) {
            case FrameLayout.PLACE_PELVIS -> Place.PELVIS;
            case FrameLayout.PLACE_UPPER_BACK -> Place.UPPER_BACK;
            default -> null;
        };
    }

    private @Nullable FrameSensor sensor(int number) {
        for (int i = 0; i < sensors.size(); i++) {
            if (sensors.get(i).sensor() == number) {
                return sensors.get(i);
            }
        }
        if (sensors.size() == WireStreams.MOST_SENSORS) {
            return null;
        }
        FrameSensor sensor = new FrameSensor(number, hold, receiver, tally);
        sensors.add(sensor);
        return sensor;
    }
}
