package evenfall.report.log;

import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Consumer;

/**
 * The right to write to one athlete's part of a log, held by one program at a time. The system gives it back when a
 * program dies, so a lock is never left behind.
 */
final class LogLock implements AutoCloseable {

    private static final Words WORDS = Words.beside(LogLock.class);

    private static final String NAME = ".lock";
    private static final long PAUSE_MS = 50;

    /** Far behind all that is written: some systems let nobody read what is locked. */
    private static final long LOCKED_BYTE = 1L << 40;

    /** Sizes the lock file is given for a moment; so many that two are hardly ever the same. */
    private static final int SIZES = 1 << 20;

    /**
     * Who of this program holds or tries. Some systems drop a program's lock as soon as the program closes the file once, by
     * whichever channel: so only one thread at a time has it open.
     */
    private static final Map<Path, Semaphore> IN_PROGRAM = new ConcurrentHashMap<>();

    private final FileChannel channel;
    private final Semaphore turn;

    private LogLock(FileChannel channel, Semaphore turn) {
        this.channel = channel;
        this.turn = turn;
    }

    /**
     * Takes the lock of a folder, waiting while another holds it.
     *
     * @param patience how long to wait
     * @param tell told once, in a sentence, if there is need to wait
     * @throws LogBusyException if the other does not let go in time
     */
    static LogLock take(Path folder, Duration patience, Consumer<String> tell) throws IOException {
        Patience left = new Patience(folder, patience, tell);
        Semaphore turn = IN_PROGRAM.computeIfAbsent(folder.toRealPath(), key -> new Semaphore(1));
        while (!turn.tryAcquire()) {
            left.pause();
        }
        FileChannel channel = null;
        boolean taken = false;
        try {
            channel = OwnerOnly.channel(
                    folder.resolve(NAME), EnumSet.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE));
            while (channel.tryLock(LOCKED_BYTE, 1, false) == null) {
                left.pause();
            }
            taken = true;
            return new LogLock(channel, turn);
        } finally {
            if (!taken) {
                if (channel != null) {
                    channel.close();
                }
                turn.release();
            }
        }
    }

    /**
     * Whether the lock still guards the folder: whoever waited while the athlete was deleted holds the lock of a file that
     * is no longer there, or no longer the same. The file is asked for its size alone, for opening it could lose the lock.
     */
    boolean guards(Path folder) throws IOException {
        int size = 1 + ThreadLocalRandom.current().nextInt(SIZES);
        channel.truncate(0);
        try {
            channel.write(ByteBuffer.allocate(1), size - 1L);
        } catch (IOException e) {
            // A full disk takes not one byte; it is there that a session most needs its end, and nobody made room
            // meanwhile.
            return Files.exists(folder.resolve(NAME));
        }
        try {
            return Files.size(folder.resolve(NAME)) == size;
        } catch (NoSuchFileException e) {
            return false;
        } finally {
            channel.truncate(0);
        }
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            turn.release();
        }
    }

    /** Waits until time is up, and says once that there is need to. */
    private static final class Patience {

        private final Path folder;
        private final Consumer<String> tell;
        private final long end;
        private boolean told;

        Patience(Path folder, Duration patience, Consumer<String> tell) {
            this.folder = folder;
            this.tell = tell;
            this.end = System.nanoTime() + patience.toNanos();
        }

        void pause() throws LogBusyException {
            if (System.nanoTime() >= end) {
                throw new LogBusyException(folder);
            }
            if (!told) {
                tell.accept(WORDS.say("busy.waiting", folder));
                told = true;
            }
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new LogBusyException(folder);
            }
        }
    }
}
