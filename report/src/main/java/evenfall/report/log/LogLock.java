package evenfall.report.log;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.EnumSet;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The right to write to one athlete's part of a log, held by one program at a time. The system gives it back when a
 * program dies, so a lock is never left behind.
 */
final class LogLock implements AutoCloseable {

    private static final String NAME = ".lock";
    private static final long PAUSE_MS = 50;

    private final FileChannel channel;

    private LogLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Takes the lock of a folder, waiting while another holds it.
     *
     * @param patience how long to wait
     * @param tell told once, in a sentence, if there is need to wait
     * @throws LogBusyException if the other does not let go in time
     */
    static LogLock take(Path folder, Duration patience, Consumer<String> tell) throws IOException {
        FileChannel channel = OwnerOnly.channel(
                folder.resolve(NAME), EnumSet.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE));
        boolean taken = false;
        try {
            long end = System.nanoTime() + patience.toNanos();
            boolean told = false;
            while (tryLock(channel) == null) {
                if (System.nanoTime() >= end) {
                    throw new LogBusyException(folder);
                }
                if (!told) {
                    tell.accept("Another program is writing to " + folder + "; waiting for it to finish.");
                    told = true;
                }
                pause(folder);
            }
            taken = true;
            return new LogLock(channel);
        } finally {
            if (!taken) {
                channel.close();
            }
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            // Held by another thread of this program.
            return null;
        }
    }

    private static void pause(Path folder) throws LogBusyException {
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new LogBusyException(folder);
        }
    }
}
