package evenfall.ingest.recorder;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;

/** Beside a port's bytes: how many had come by when, and what happened. Lines of {@code bytes,arrived,remark}. */
final class ArrivalFile implements AutoCloseable {

    static final String HEADER = "bytes,arrived,remark";

    private static final long BETWEEN_MS = 200;

    /** No line was written. */
    static final double NOT_NOTED = Double.NaN;

    private final FileChannel channel;
    private final Clock clock;
    private long lastMs = Long.MIN_VALUE / 2;

    /** Writes to a new file. */
    ArrivalFile(FileChannel channel, Clock clock) throws IOException {
        this.channel = channel;
        this.clock = clock;
        write(HEADER);
    }

    /**
     * Notes that so many bytes have come by now, unless it was noted only just before.
     *
     * @return now as it was noted, s since the epoch; {@link #NOT_NOTED} if it was not
     */
    synchronized double at(long bytes) throws IOException {
        long now = clock.millis();
        if (now - lastMs < BETWEEN_MS && now >= lastMs) {
            return NOT_NOTED;
        }
        lastMs = now;
        write(bytes + "," + text(now) + ",");
        return now / 1000.0;
    }

    /** Notes something that happened after so many bytes; gives the moment, s since the epoch. */
    synchronized double remark(long bytes, Remark remark) throws IOException {
        long now = clock.millis();
        write(bytes + "," + text(now) + "," + remark.code());
        return now / 1000.0;
    }

    synchronized void force() throws IOException {
        if (channel.isOpen()) {
            channel.force(false);
        }
    }

    @Override
    public synchronized void close() throws IOException {
        channel.close();
    }

    private String text(long now) {
        return OffsetDateTime.ofInstant(Instant.ofEpochMilli(now), clock.getZone())
                .format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }

    private void write(String line) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.US_ASCII));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }
}
