package evenfall.ingest.table;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;
import org.jspecify.annotations.Nullable;

/**
 * The text bytes of a table file: told by its first bytes whether it is gz, UTF-8 or UTF-16, and handed out as UTF-8
 * without byte-order mark. A gz that ends early or is damaged simply ends; {@link #damage()} says so.
 */
final class TableSource extends InputStream {

    private static final Words WORDS = Words.beside(TableSource.class);

    private static final int CHUNK = 1 << 16;

    private final String name;
    private final CountingInput counted;
    private final InputStream text;
    private final boolean compressed;
    private @Nullable String damage;

    private TableSource(Path file, Progress progress) throws IOException {
        this.name = String.valueOf(file.getFileName());
        FileCheck.regular(file, WORDS.say("kind.file"));
        try {
            this.counted = new CountingInput(
                    Files.newInputStream(file), Files.size(file), WORDS.say("reading", name), progress);
        } catch (AccessDeniedException e) {
            throw new UnusableInputException(WORDS.say("file.unreadable", file), e);
        }
        InputStream plain = null;
        try {
            PushedBack raw = new PushedBack(counted);
            this.compressed = raw.startsWith(0x1F, 0x8B);
            if (compressed) {
                PushedBack unpacked = new PushedBack(new Forgiving(new GZIPInputStream(raw, CHUNK)));
                if (unpacked.startsWith(0x1F, 0x8B)) {
                    throw new UnusableInputException(WORDS.say("gz.twice", name));
                }
                plain = decoded(unpacked);
            } else {
                plain = decoded(raw);
            }
        } catch (ZipException e) {
            throw new UnusableInputException(WORDS.say("gz.start", name), e);
        } catch (EOFException e) {
            throw new UnusableInputException(WORDS.say("gz.ends", name), e);
        } finally {
            if (plain == null) {
                counted.close();
            }
        }
        this.text = plain;
    }

    /**
     * Opens a file.
     *
     * @throws UnusableInputException if the first bytes show that it cannot be a table
     */
    static TableSource open(Path file, Progress progress) throws IOException {
        return new TableSource(file, progress);
    }

    /** What cut the text short, as the end of a sentence, or null if it came to its regular end. */
    @Nullable String damage() {
        return damage;
    }

    /** Whether the file is gz. */
    boolean compressed() {
        return compressed;
    }

    @Override
    public int read() throws IOException {
        return text.read();
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        return text.read(into, offset, length);
    }

    @Override
    public void close() throws IOException {
        text.close();
    }

    private InputStream decoded(PushedBack bytes) throws IOException {
        byte[] head = bytes.head();
        Encodings.refuseForeign(head, name);
        if (bytes.startsWith(0xEF, 0xBB, 0xBF)) {
            bytes.skipNBytes(3);
            return bytes;
        }
        if (bytes.startsWith(0xFF, 0xFE)) {
            bytes.skipNBytes(2);
            return new Utf16Input(bytes, StandardCharsets.UTF_16LE);
        }
        if (bytes.startsWith(0xFE, 0xFF)) {
            bytes.skipNBytes(2);
            return new Utf16Input(bytes, StandardCharsets.UTF_16BE);
        }
        if (Encodings.looksLikeUtf16(head, 1)) {
            return new Utf16Input(bytes, StandardCharsets.UTF_16LE);
        }
        if (Encodings.looksLikeUtf16(head, 0)) {
            return new Utf16Input(bytes, StandardCharsets.UTF_16BE);
        }
        Encodings.refuseBinary(head, name);
        return bytes;
    }

    /** Unpacks as far as it goes. */
    private final class Forgiving extends InputStream {
        private final InputStream gz;

        Forgiving(InputStream gz) {
            this.gz = gz;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            if (damage != null) {
                return -1;
            }
            try {
                return gz.read(into, offset, length);
            } catch (EOFException e) {
                damage = WORDS.say("gz.damage.ends");
                return -1;
            } catch (ZipException e) {
                damage = WORDS.say("gz.damage");
                return -1;
            }
        }

        @Override
        public void close() throws IOException {
            gz.close();
        }
    }
}
