package evenfall.report.turn;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.log.FileTrouble;
import java.io.IOException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Sessions that are over, analysed one after another while the next is recorded. */
public final class LaterWork implements AutoCloseable {

    private static final long PATIENCE_MIN = 60;

    private static final Words WORDS = Words.beside(LaterWork.class);

    private final Consumer<String> tell;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "analysis");
        thread.setDaemon(true);
        return thread;
    });
    private volatile boolean failed;

    /** Something to do. */
    public interface Work {
        void perform() throws IOException;
    }

    /**
     * Work that waits.
     *
     * @param tell told, in a sentence, what went wrong
     */
    public LaterWork(Consumer<String> tell) {
        this.tell = tell;
    }

    /** Does it when what came before is done. Whatever goes wrong is one sentence; the recording goes on. */
    public void add(Work work) {
        worker.execute(() -> {
            try {
                work.perform();
            } catch (UnusableInputException e) {
                tell.accept(String.valueOf(e.getMessage()));
            } catch (IOException e) {
                failed = true;
                tell.accept(FileTrouble.sentence(e));
            } catch (RuntimeException | OutOfMemoryError e) {
                failed = true;
                tell.accept(WORDS.say("unanalysed", String.valueOf(e)));
            }
        });
    }

    /** Waits until all is done; says whether all went well. */
    public boolean await() {
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
