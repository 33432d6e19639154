package evenfall.report.table;

import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.recording.SensorStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Orientation as a table {@code t_s,qw,qx,qy,qz}, one row a sample: time in s from the first sample with six decimals,
 * the quaternion (world from sensor, scalar first) with seven, about what its 32-bit numbers hold.
 */
public final class OrientationCsv {

    private static final byte[] HEADER = "t_s,qw,qx,qy,qz\n".getBytes(StandardCharsets.US_ASCII);
    private static final int TIME_DECIMALS = 6;
    private static final int QUATERNION_DECIMALS = 7;
    private static final long[] POWERS = {1L, 10L, 100L, 1_000L, 10_000L, 100_000L, 1_000_000L, 10_000_000L};

    /** The longest row: a time of 20 bytes and four numbers of 11 with their separators, and some air. */
    private static final int ROW_ROOM = 128;

    private final byte[] buffer = new byte[1 << 16];
    private final OutputStream out;
    private int used;

    private OrientationCsv(OutputStream out) {
        this.out = out;
    }

    /** Writes the header and all rows. */
    public static void write(SensorStream stream, OrientationTrack track, OutputStream out) throws IOException {
        if (stream.size() != track.size()) {
            throw new IllegalArgumentException(
                    "orientation of " + track.size() + " samples for a stream of " + stream.size());
        }
        out.write(HEADER);
        OrientationCsv csv = new OrientationCsv(out);
        for (int i = 0; i < stream.size(); i++) {
            csv.decimal(stream.time(i), TIME_DECIMALS, ',');
            csv.decimal(track.w(i), QUATERNION_DECIMALS, ',');
            csv.decimal(track.x(i), QUATERNION_DECIMALS, ',');
            csv.decimal(track.y(i), QUATERNION_DECIMALS, ',');
            csv.decimal(track.z(i), QUATERNION_DECIMALS, '\n');
            if (csv.used > csv.buffer.length - ROW_ROOM) {
                csv.flush();
            }
        }
        csv.flush();
    }

    private void flush() throws IOException {
        out.write(buffer, 0, used);
        used = 0;
    }

    /** Appends a finite number below 10^11 in size. */
    private void decimal(double value, int decimals, char end) {
        long power = POWERS[decimals];
        long scaled = Math.round(value * power);
        if (scaled < 0) {
            buffer[used++] = '-';
            scaled = -scaled;
        }
        long whole = scaled / power;
        int digits = 1;
        for (long rest = whole; rest >= 10; rest /= 10) {
            digits++;
        }
        for (int k = used + digits - 1; k >= used; k--) {
            buffer[k] = (byte) ('0' + whole % 10);
            whole /= 10;
        }
        used += digits;
        buffer[used++] = '.';
        long fraction = scaled % power;
        for (int k = used + decimals - 1; k >= used; k--) {
            buffer[k] = (byte) ('0' + fraction % 10);
            fraction /= 10;
        }
        used += decimals;
        buffer[used++] = (byte) end;
    }
}
