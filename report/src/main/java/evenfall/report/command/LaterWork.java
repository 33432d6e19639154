package evenfall.report.command;

import evenfall.ingest.recording.UnusableInputException;
import java.io.IOException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** Sessions that are over, analysed one after another while the next is recorded. */
final class LaterWork implements AutoCloseable {

    private static final long PATIENCE_MIN = 60;

    private final Console console;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "analysis");
        thread.setDaemon(true);
        return thread;
    });
    private volatile boolean failed;

    /** Something to do. */
    interface Work {
        void perform() throws IOException;
    }

    LaterWork(Console console) {
        this.console = console;
    }

    /** Does it when what came before is done. Whatever goes wrong is one sentence; the recording goes on. */
    void add(Work work) {
        worker.execute(() -> {
            try {
                work.perform();
            } catch (UnusableInputException e) {
                console.say(String.valueOf(e.getMessage()));
            } catch (IOException e) {
                failed = true;
                console.say(Sentences.ofFiles(e));
            } catch (RuntimeException | OutOfMemoryError e) {
                failed = true;
                console.say("A session could not be analysed (" + e
                        + "); what was recorded is kept, and 'session' analyses it again.");
            }
        });
    }

    /** Waits until all is done; says whether all went well. */
    boolean await() {
        worker.shutdown();
        try {
            boolean done = worker.awaitTermination(PATIENCE_MIN, TimeUnit.MINUTES);
            return done && !failed;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    @Override
    public void close() {
        await();
    }
}
