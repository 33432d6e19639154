package evenfall.ingest.recorder;

import evenfall.ingest.serial.Port;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;

/** Reads one port until it is told to end: keeps its bytes, notes when it goes away and comes back, hands on to decode. */
final class PortReader implements Runnable {

    /** When the program is told to end, ports may be closed a moment before the recorder hears of it. */
    private static final long GRACE_MS = 200;

    private static final long PAUSE_MS = 20;
    private static final int BUFFER = 1 << 16;

    private final Port port;
    private final PortFile file;
    private final PortListener listener;
    private final CountDownLatch ended;
    private final byte[] buffer = new byte[BUFFER];
    private volatile boolean there = true;
    private volatile boolean closing;
    private volatile @Nullable IOException failure;

    /**
     * A reader.
     *
     * @param port closed at the end
     * @param file closed at the end
     * @param listener told of all that comes, and of the end
     * @param ended counted down at the end
     */
    PortReader(Port port, PortFile file, PortListener listener, CountDownLatch ended) {
        this.port = port;
        this.file = file;
        this.listener = listener;
        this.ended = ended;
    }

    String name() {
        return port.name();
    }

    /** What came so far. */
    Heard heard() {
        return new Heard(there, file.bytes(), listener.counts());
    }

    /** Why writing failed, if it did. */
    Optional<IOException> failure() {
        return Optional.ofNullable(failure);
    }

    /** Wishes for the end. */
    void end() {
        closing = true;
    }

    /** Has the system write what came to the disk. */
    void force() {
        try {
            file.force();
        } catch (IOException e) {
            failure = e;
        }
    }

    @Override
    public void run() {
        try (port;
                file) {
            while (!closing && failure == null) {
                look();
            }
            if (failure == null) {
                file.remark(Remark.END);
            }
        } catch (IOException e) {
            failure = e;
        } finally {
            listener.end();
            ended.countDown();
        }
    }

    private void look() throws IOException {
        int count = port.read(buffer);
        if (count == Port.GONE) {
            if (there && lost()) {
                there = false;
                listener.gone(file.remark(Remark.GONE));
            }
            pause(PAUSE_MS);
            return;
        }
        if (!there) {
            there = true;
            file.remark(Remark.BACK);
        }
        if (count > 0) {
            keep(count);
        }
    }

    private void keep(int count) throws IOException {
        listener.hear(buffer, count, file.append(buffer, count));
    }

    private boolean lost() {
        pause(GRACE_MS);
        return !closing;
    }

    private static void pause(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
