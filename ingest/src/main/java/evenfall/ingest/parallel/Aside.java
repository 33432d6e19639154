package evenfall.ingest.parallel;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** Work that goes on beside the caller's, on a thread of its own that keeps no program from ending. */
public final class Aside<T> {

    private final FutureTask<T> task;

    private Aside(FutureTask<T> task) {
        this.task = task;
    }

    /** Starts {@code work}; {@code name} names its thread. */
    public static <T> Aside<T> start(String name, Supplier<T> work) {
        Aside<T> aside = new Aside<>(new FutureTask<>(work::get));
        Thread thread = new Thread(aside.task, name);
        thread.setDaemon(true);
        thread.start();
        return aside;
    }

    /**
     * Waits for what the work gives; what it threw is thrown here.
     *
     * @throws CancellationException if the waiting thread is interrupted
     */
    public T result() {
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("interrupted");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException unchecked) {
                throw unchecked;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
