package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.log.WholeFile;
import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where a command's result goes: standard output, or a file that is written whole or not at all. */
final class ResultFile {

    private static final Words WORDS = Words.beside(ResultFile.class);

    /** How standard output is named where a file is asked for (POSIX, Utility Syntax Guidelines, 13). */
    private static final Path STANDARD_OUTPUT = Path.of("-");

    private static final int BUFFER = 1 << 16;

    private final Console console;
    private final @Nullable Path file;

    private ResultFile(Console console, @Nullable Path file) {
        this.console = console;
        this.file = file;
    }

    /** Text that is written. */
    @FunctionalInterface
    interface Text {
        void writeTo(Appendable out) throws IOException;
    }

    /**
     * A place for results, checked before the work begins.
     *
     * @param file the file, or null or {@code -} for standard output
     * @param inputs what is read and must not be written over
     */
    static ResultFile at(Console console, @Nullable Path file, List<Path> inputs) throws IOException {
        if (file == null || file.equals(STANDARD_OUTPUT)) {
            return new ResultFile(console, null);
        }
        check(file, inputs);
        return new ResultFile(console, file);
    }

    void write(Text text) throws IOException {
        writeBytes(out -> {
            Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), BUFFER);
            text.writeTo(writer);
            writer.flush();
        });
    }

    void writeBytes(WholeFile.Body body) throws IOException {
        if (file != null) {
            WholeFile.write(file, stream -> buffered(stream, body));
        } else {
            buffered(console.results(), body);
        }
    }

    private static void buffered(OutputStream stream, WholeFile.Body body) throws IOException {
        BufferedOutputStream out = new BufferedOutputStream(stream, BUFFER);
        body.writeTo(out);
        out.flush();
    }

    private static void check(Path file, List<Path> inputs) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file)) {
            throw new UsageException(WORDS.say("out.folder", file));
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw new UsageException(WORDS.say("out.no.folder", String.valueOf(folder)));
        }
        for (Path input : inputs) {
            if (Files.exists(file) && Files.exists(input) && Files.isSameFile(file, input)) {
                throw new UsageException(WORDS.say("out.input", file));
            }
        }
        if ("raw".equals(String.valueOf(folder.getFileName())) && Files.exists(file)) {
            throw new UsageException(WORDS.say("out.raw", file));
        }
    }
}
