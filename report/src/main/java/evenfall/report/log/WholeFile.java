package evenfall.report.log;

import evenfall.ingest.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Writes a file whole or not at all: into a temporary file beside it, synced, then renamed. */
public final class WholeFile {

    private static final Words WORDS = Words.beside(WholeFile.class);

    /** Marks files that a killed program may leave behind; nobody reads them. */
    public static final String TEMPORARY = ".part";

    /** The process that wrote a temporary file. */
    private static final Pattern WRITER = Pattern.compile("\\.(\\d{1,18})-\\d+" + Pattern.quote(TEMPORARY) + "$");

    private static final Set<StandardOpenOption> OPTIONS =
            EnumSet.of(StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE);

    private WholeFile() {}

    /** What fills a file. */
    @FunctionalInterface
    public interface Body {
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Writes {@code target}, replacing what is there only once all is on disk. A target that is no plain file (a pipe,
     * a terminal) is written straight through.
     */
    public static void write(Path target, Body body) throws IOException {
        write(target, body, false);
    }

    /** Writes a file of the log, readable by its owner only. */
    static void writePrivate(Path target, String text) throws IOException {
        write(target, out -> out.write(text.getBytes(StandardCharsets.UTF_8)), true);
    }

    /** Writes a file that its owner only may read. */
    static void writePrivate(Path target, Body body) throws IOException {
        write(target, body, true);
    }

    private static void write(Path target, Body body, boolean ownerOnly) throws IOException {
        boolean exists = Files.exists(target);
        if (exists && !Files.isRegularFile(target)) {
            try (OutputStream out = Files.newOutputStream(target)) {
                body.writeTo(out);
            } catch (FileSystemException e) {
                throw e;
            } catch (IOException e) {
                throw ofTarget(target, e);
            }
            return;
        }
        Path real = exists ? target.toRealPath() : target.toAbsolutePath();
        Path temporary = real.resolveSibling("." + real.getFileName() + "."
                + ProcessHandle.current().pid() + "-" + Thread.currentThread().getId() + TEMPORARY);
        try {
            try (OutputStream out = ownerOnly
                    ? OwnerOnly.open(temporary, OPTIONS)
                    : Files.newOutputStream(temporary, OPTIONS.toArray(OpenOption[]::new))) {
                body.writeTo(out);
            }
            sync(temporary);
            rename(temporary, real);
        } catch (FileSystemException e) {
            throw temporary.toString().equals(e.getFile()) ? ofTarget(target, e) : e;
        } catch (IOException e) {
            throw ofTarget(target, e);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    /** The same failure told of the file that was asked for: nobody knows the temporary one. */
    private static IOException ofTarget(Path target, IOException e) {
        if (e instanceof AccessDeniedException) {
            return new AccessDeniedException(target.toString());
        }
        String reason = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
        FileSystemException told =
                new FileSystemException(target.toString(), null, reason == null ? WORDS.say("trouble.unmade") : reason);
        told.initCause(e);
        return told;
    }

    /** Clears away what programs left here that were killed while they wrote. */
    static void clearAfterTheDead(Path folder) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, ".*" + TEMPORARY)) {
            for (Path file : left) {
                Matcher writer = WRITER.matcher(String.valueOf(file.getFileName()));
                if (writer.find()
                        && ProcessHandle.of(Long.parseLong(writer.group(1))).isEmpty()) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    /** Waits until a file's bytes are on disk. */
    static void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Renames at one stroke, replacing a file, and makes the rename last. */
    static void rename(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
        syncFolder(to.toAbsolutePath().getParent());
    }

    /** Waits until a folder's list of names is on disk, where the system can do that. */
    static void syncFolder(@Nullable Path folder) {
        if (folder == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems do not open folders; there the rename itself is all one can ask for.
            return;
        }
    }
}
