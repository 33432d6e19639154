package evenfall.ingest.recorder;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * The bytes of one port as they came, with a file of arrival times beside them. Written through at once, so that they
 * survive the program; {@link #force} makes them survive the machine. Locked while it is written, so that others see
 * that a recording is going on.
 */
final class PortFile implements AutoCloseable {

    /** Names of such files end in this. */
    static final String ENDING = ".wire";

    /** Names of the files of arrival times end in this. */
    static final String ARRIVALS_ENDING = ".arrivals.csv";

    private final FileChannel channel;
    private final ArrivalFile arrivals;
    private final AtomicBoolean dirty = new AtomicBoolean();
    private volatile long bytes;

    /**
     * Begins a pair of new files.
     *
     * @param name their name without ending
     * @throws IOException also when there is such a file already: nothing is ever written over
     */
    PortFile(Path folder, String name, Clock clock, NewFile files) throws IOException {
        this.channel = files.make(folder.resolve(name + ENDING));
        channel.lock();
        this.arrivals = new ArrivalFile(files.make(folder.resolve(name + ARRIVALS_ENDING)), clock);
    }

    /** The file of arrival times of a file of bytes. */
    static Path arrivalsOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return file.resolveSibling(name.substring(0, name.length() - ENDING.length()) + ARRIVALS_ENDING);
    }

    /** Appends a piece; gives its arrival as it was noted, s since the epoch, or {@link ArrivalFile#NOT_NOTED}. */
    double append(byte[] from, int count) throws IOException {
        double noted = arrivals.at(bytes);
        ByteBuffer buffer = ByteBuffer.wrap(from, 0, count);
        long written = bytes;
        while (buffer.hasRemaining()) {
            written += channel.write(buffer);
        }
        bytes = written;
        dirty.set(true);
        return noted;
    }

    /** Notes something that happened; gives the moment, s since the epoch. */
    double remark(Remark remark) throws IOException {
        dirty.set(true);
        return arrivals.remark(bytes, remark);
    }

    /** Bytes so far. */
    long bytes() {
        return bytes;
    }

    /** Has the system write what came to the disk; may be called from another thread. */
    void force() throws IOException {
        if (dirty.getAndSet(false) && channel.isOpen()) {
            channel.force(false);
            arrivals.force();
        }
    }

    @Override
    public void close() throws IOException {
        try (channel;
                arrivals) {
            force();
        }
    }
}
