package evenfall.ingest.recorder;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** Beside a port's bytes: how many had come by when, and how it ended. Lines of {@code bytes,arrived,remark}. */
final class ArrivalFile implements AutoCloseable {

    static final String HEADER = "bytes,arrived,remark";

    private static final long BETWEEN_MS = 200;

    private final FileChannel channel;
    private final Clock clock;
    private long lastMs = Long.MIN_VALUE / 2;

    ArrivalFile(Path file, Clock clock) throws IOException {
        this.channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        this.clock = clock;
        write(HEADER);
    }

    /** Notes that so many bytes have come by now, unless it was noted only just before. */
    synchronized void at(long bytes) throws IOException {
        long now = clock.millis();
        if (now - lastMs >= BETWEEN_MS || now < lastMs) {
            lastMs = now;
            write(bytes + "," + stamp() + ",");
        }
    }

    /** Notes something that happened after so many bytes. */
    synchronized void remark(long bytes, Remark remark) throws IOException {
        write(bytes + "," + stamp() + "," + remark.code());
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

    private String stamp() {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        return OffsetDateTime.ofInstant(now, clock.getZone()).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }

    private void write(String line) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.US_ASCII));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }
}
