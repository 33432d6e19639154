package evenfall.report.rehearsal;

import evenfall.ingest.serial.Port;
import java.io.IOException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * A port to write to where the other end may keep one waiting: a system holds a few kilobytes for a reader, and whoever
 * writes more than that waits for as long as nobody reads. That is said once; the wait goes on.
 */
public final class PatientPort implements Port {

    private static final long NEVER = Long.MIN_VALUE;

    private final Port port;
    private final long patienceNs;
    private final Runnable tell;
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "patience");
        thread.setDaemon(true);
        return thread;
    });
    private volatile long waitsSinceNs = NEVER;
    private boolean told;

    /**
     * A port around another.
     *
     * @param patienceMs how long a write may take before it is said
     * @param tell says it, in a thread of its own
     */
    public PatientPort(Port port, long patienceMs, Runnable tell) {
        this.port = port;
        this.patienceNs = TimeUnit.MILLISECONDS.toNanos(patienceMs);
        this.tell = tell;
        long stepNs = Math.max(1, patienceNs / 10);
        var unused = clock.scheduleWithFixedDelay(this::look, stepNs, stepNs, TimeUnit.NANOSECONDS);
    }

    private void look() {
        long since = waitsSinceNs;
        if (!told && since != NEVER && System.nanoTime() - since >= patienceNs) {
            told = true;
            tell.run();
        }
    }

    @Override
    public String name() {
        return port.name();
    }

    @Override
    public int read(byte[] into) {
        return port.read(into);
    }

    @Override
    public void write(byte[] bytes, int from, int to) throws IOException {
        waitsSinceNs = System.nanoTime();
        try {
            port.write(bytes, from, to);
        } finally {
            waitsSinceNs = NEVER;
        }
    }

    @Override
    public boolean speed(int baud) {
        return port.speed(baud);
    }

    @Override
    public void close() {
        clock.shutdownNow();
        port.close();
    }
}
