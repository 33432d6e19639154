package evenfall.ingest.recorder;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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
    private long bytes;

    /**
     * Begins a pair of new files.
     *
     * @param name their name without ending
     * @throws IOException also when there is such a file already: nothing is ever written over
     */
    PortFile(Path folder, String name, Clock clock) throws IOException {
        this.channel = FileChannel.open(
                folder.resolve(name + ENDING), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        channel.lock();
        this.arrivals = new ArrivalFile(folder.resolve(name + ARRIVALS_ENDING), clock);
    }

    void append(byte[] from, int count) throws IOException {
        arrivals.at(bytes);
        ByteBuffer buffer = ByteBuffer.wrap(from, 0, count);
        while (buffer.hasRemaining()) {
            bytes += channel.write(buffer);
        }
        dirty.set(true);
    }

    void remark(Remark remark) throws IOException {
        arrivals.remark(bytes, remark);
        dirty.set(true);
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
        force();
        arrivals.close();
        channel.close();
    }
}
