package evenfall.report.command;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.Locale;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Where a command's results, sentences and progress go, and where a person's lines come from. */
final class Console {

    private static final Words WORDS = Words.beside(Console.class);

    private final StandardLines lines;
    private final PrintStream out;
    private final PrintStream err;
    private final Progress progress;
    private final Supplier<@Nullable IOException> outputFailure;

    /**
     * A console.
     *
     * @param lines what a person types meanwhile
     * @param out results
     * @param err sentences for a person
     * @param progress told of long work
     * @param outputFailure why a write to {@code out} failed, or null if it did not or is not known
     */
    Console(
            StandardLines lines,
            PrintStream out,
            PrintStream err,
            Progress progress,
            Supplier<@Nullable IOException> outputFailure) {
        this.lines = lines;
        this.out = out;
        this.err = err;
        this.progress = progress;
        this.outputFailure = outputFailure;
    }

    /** What a person types meanwhile. */
    StandardLines lines() {
        return lines;
    }

    /** Where to tell of long work. */
    Progress progress() {
        return progress;
    }

    /** Says one sentence to the person on standard error. */
    void say(String sentence) {
        endProgress();
        err.println(sentence.replaceAll("\\s*\\R\\s*", " ").strip());
        err.flush();
    }

    /** Takes the progress bar off the screen. */
    void endProgress() {
        if (progress instanceof ProgressBar bar) {
            bar.clear();
        }
    }

    /** Standard output as bytes; fails with {@link OutputClosedException} once nobody reads it any more. */
    OutputStream results() {
        endProgress();
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                write(new byte[] {(byte) b}, 0, 1);
            }

            @Override
            public void write(byte[] bytes, int offset, int length) throws IOException {
                out.write(bytes, offset, length);
                flush();
            }

            @Override
            public void flush() throws IOException {
                if (out.checkError()) {
                    throw failure();
                }
            }
        };
    }

    private IOException failure() {
        IOException cause = outputFailure.get();
        String message = cause == null ? "" : String.valueOf(cause.getMessage());
        if (cause == null || message.toLowerCase(Locale.ROOT).contains("pipe")) {
            return new OutputClosedException();
        }
        return new IOException(WORDS.say("output", message), cause);
    }
}
