package evenfall.report.speech;

import evenfall.ingest.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Speaks with a program of the system, one sentence at a time, in a thread of its own. One that takes too long is ended, one that
 * fails is passed over. At most one waits: the newest.
 */
public final class Speaker implements Speech {

    /** A sentence of this program takes two or three seconds. */
    public static final long LONGEST_MS = 8_000;

    private static final long END_MS = 500;

    private final SpeechProgram program;
    private final long longestMs;
    private final Object lock = new Object();
    private final Thread thread = new Thread(this::speak, "speech");
    private @Nullable String waiting;
    private @Nullable Process speaking;
    private boolean hushed;
    private boolean closed;

    /**
     * A voice by the first of the usual programs that is there, or silence that says why.
     *
     * @param searchPath folders as in the variable {@code PATH}; may be empty
     */
    public static Speech find(String searchPath) {
        return SpeechProgram.find(searchPath)
                .<Speech>map(Speaker::new)
                .orElseGet(() -> new Unspoken(
                        Words.beside(Speaker.class).say("unheard", String.join(", ", SpeechProgram.names()))));
    }

    /** A speaker by this program. */
    public Speaker(SpeechProgram program) {
        this(program, LONGEST_MS);
    }

    Speaker(SpeechProgram program, long longestMs) {
        this.program = program;
        this.longestMs = longestMs;
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void say(String sentence) {
        synchronized (lock) {
            if (!closed) {
                waiting = sentence;
                lock.notifyAll();
            }
        }
    }

    @Override
    public void sayAtOnce(String sentence) {
        synchronized (lock) {
            hush();
            say(sentence);
        }
    }

    @Override
    public void hush() {
        synchronized (lock) {
            waiting = null;
            hushed = true;
            Process process = speaking;
            if (process != null) {
                end(process);
            }
        }
    }

    @Override
    public void close() {
        synchronized (lock) {
            closed = true;
            lock.notifyAll();
        }
        try {
            thread.join(longestMs + END_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        hush();
    }

    private void speak() {
        try {
            for (String sentence = next(); sentence != null; sentence = next()) {
                speak(sentence);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private @Nullable String next() throws InterruptedException {
        synchronized (lock) {
            while (waiting == null && !closed) {
                lock.wait();
            }
            String sentence = waiting;
            waiting = null;
            hushed = false;
            return sentence;
        }
    }

    private void speak(String sentence) throws InterruptedException {
        Process process;
        try {
            process = new ProcessBuilder(program.command(sentence))
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            return;
        }
        synchronized (lock) {
            speaking = process;
            if (hushed) {
                end(process);
            }
        }
        try {
            give(process, sentence);
            if (!process.waitFor(longestMs, TimeUnit.MILLISECONDS)) {
                end(process);
            }
            process.waitFor(END_MS, TimeUnit.MILLISECONDS);
        } finally {
            synchronized (lock) {
                speaking = null;
            }
        }
    }

    private void give(Process process, String sentence) {
        try (OutputStream input = process.getOutputStream()) {
            if (program.byInput()) {
                input.write(sentence.getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            // It did not want to hear; it ends, or is ended, by itself.
            return;
        }
    }

    private static void end(Process process) {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
    }
}
