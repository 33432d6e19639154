package evenfall.ingest.wire;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Gravity;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Writes samples in the text form of the wire, each with its checksum and ended by LF. */
public final class LineWriter {

    private LineWriter() {}

    /**
     * The line of one sample: time to the microsecond, force to 1e-6 g, turn rate to 1e-5 deg/s.
     *
     * @param place which sensor
     * @param timeS the sensor's own clock, s, not negative
     * @param ax specific force along the sensor's x, m/s², and so on
     * @param gx turn rate about the sensor's x, rad/s, and so on
     */
    public static byte[] line(
            Place place, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
        StringBuilder text = new StringBuilder(112);
        text.append(place == Place.PELVIS ? 'P' : 'B');
        append(text, timeS * 1000, 3);
        append(text, ax / Gravity.STANDARD, 6);
        append(text, ay / Gravity.STANDARD, 6);
        append(text, az / Gravity.STANDARD, 6);
        append(text, Math.toDegrees(gx), 5);
        append(text, Math.toDegrees(gy), 5);
        append(text, Math.toDegrees(gz), 5);
        byte[] body = text.toString().getBytes(StandardCharsets.US_ASCII);
        byte[] line = Arrays.copyOf(body, body.length + 6);
        int crc = Crc16.of(body, 0, body.length);
        line[body.length] = '*';
        for (int i = 0; i < 4; i++) {
            line[body.length + 1 + i] = (byte) Character.toUpperCase(Character.forDigit(crc >> (12 - 4 * i) & 0xF, 16));
        }
        line[body.length + 5] = '\n';
        return line;
    }

    /** Appends a comma and a number rounded to so many decimals, trailing zeros left out. */
    private static void append(StringBuilder text, double value, int decimals) {
        text.append(',');
        long scale = 1;
        for (int i = 0; i < decimals; i++) {
            scale *= 10;
        }
        long counts = Math.round(Math.abs(value) * scale);
        if (value < 0 && counts > 0) {
            text.append('-');
        }
        text.append(counts / scale);
        long fraction = counts % scale;
        if (fraction > 0) {
            text.append('.');
            for (long place = scale / 10; fraction > 0; place /= 10) {
                text.append((char) ('0' + fraction / place));
                fraction %= place;
            }
        }
    }
}
