package evenfall.report.round;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.report.log.FileTrouble;
import java.io.IOException;
import java.util.function.Consumer;

/** Sends work on files to the back and brings what it gives to the front; what goes wrong becomes a notice. */
final class Errands {

    private final Threads threads;
    private final Notices notices;
    private final Runnable changed;
    private int out;
    private boolean closed;

    /** Work on files. */
    interface Work<T> {
        T perform() throws IOException;
    }

    /** Work on files that gives nothing. */
    interface Job {
        void perform() throws IOException;
    }

    Errands(Threads threads, Notices notices, Runnable changed) {
        this.threads = threads;
        this.notices = notices;
        this.changed = changed;
    }

    /** Whether something is being worked on. */
    boolean busy() {
        return out > 0;
    }

    /** From now on nothing is sent: nobody looks any more, and the back may have ended. Called in the front. */
    void close() {
        closed = true;
    }

    /** Says a sentence, from any thread. */
    void tell(String sentence) {
        threads.front().execute(() -> {
            notices.add(sentence);
            changed.run();
        });
    }

    /** Work in the back that nothing follows in the front. */
    void send(Job job) {
        fetch(
                () -> {
                    job.perform();
                    return Boolean.TRUE;
                },
                done -> {});
    }

    /** Work in the back, then something in the front; called in the front. */
    <T> void fetch(Work<T> work, Consumer<T> then) {
        if (closed) {
            return;
        }
        out++;
        threads.back().execute(() -> {
            Runnable after = () -> {};
            try {
                T given = work.perform();
                after = () -> then.accept(given);
            } catch (IOException e) {
                tell(FileTrouble.sentence(e));
            } catch (UnusableInputException | IllegalArgumentException e) {
                tell(String.valueOf(e.getMessage()));
            } finally {
                comeBack(after);
            }
        });
    }

    private void comeBack(Runnable after) {
        threads.front().execute(() -> {
            out--;
            after.run();
            changed.run();
        });
    }
}
