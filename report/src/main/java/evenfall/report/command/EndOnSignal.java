package evenfall.report.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Turns Ctrl-C, or being asked to end by the system, into the wish to end: work that sees {@link #wanted} finishes what
 * it began, and the program then ends with the status of that work.
 */
final class EndOnSignal implements AutoCloseable {

    /** The system may not wait longer for a program it is shutting down. */
    private static final long PATIENCE_S = 60;

    private final CountDownLatch finished = new CountDownLatch(1);
    private final AtomicInteger status = new AtomicInteger(CommandRunner.FAILED);
    private final Thread hook = new Thread(this::signalled, "end");
    private volatile boolean wanted;
    private volatile Runnable told = () -> {};

    EndOnSignal() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Whether the end is wished for. */
    boolean wanted() {
        return wanted;
    }

    /** Says what to do at once when the end is wished for. */
    void tell(Runnable action) {
        told = action;
    }

    /** Says how the work went; without it, it failed. */
    void done(int code) {
        status.set(code);
    }

    @Override
    public void close() {
        if (!wanted) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // The signal came just now: the work is over, and its status is that of the program.
            }
        }
        finished.countDown();
    }

    private void signalled() {
        wanted = true;
        told.run();
        try {
            boolean ended = finished.await(PATIENCE_S, TimeUnit.SECONDS);
            // Left to itself a program ended by a signal has a status of its own; the work was done and says so.
            Runtime.getRuntime().halt(ended ? status.get() : CommandRunner.FAILED);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
