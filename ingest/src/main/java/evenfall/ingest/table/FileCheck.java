package evenfall.ingest.table;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** What can be said of a file before its content is understood. */
final class FileCheck {

    private static final Words WORDS = Words.beside(FileCheck.class);

    /** What stands for bytes that are no character. */
    private static final char REPLACED = '\uFFFD';

    private FileCheck() {}

    /** Refuses a path that is missing, a folder, no file, not readable or empty. */
    static void regular(Path file, String kind) throws java.io.IOException {
        if (!Files.exists(file)) {
            throw new UnusableInputException(WORDS.say("file.missing", kind, file));
        }
        if (Files.isDirectory(file)) {
            throw new UnusableInputException(WORDS.say("file.folder", kind, file));
        }
        if (!Files.isRegularFile(file)) {
            throw new UnusableInputException(WORDS.say("file.odd", kind, file));
        }
        if (!Files.isReadable(file)) {
            throw new UnusableInputException(WORDS.say("file.forbidden", kind, file));
        }
        if (Files.size(file) == 0) {
            throw new UnusableInputException(WORDS.say("file.empty", kind, file));
        }
    }

    /** Bytes as text: UTF-8 or UTF-16 by its mark, else UTF-8, else the Western European code page. */
    static String text(byte[] bytes) {
        int n = bytes.length;
        if (n >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF) {
            return new String(bytes, 3, n - 3, StandardCharsets.UTF_8);
        }
        if (n >= 2
                && ((bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF)
                        || (bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE))) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        // Which is nearly always so; to be told that it is not takes a decoder of its own.
        String utf8 = new String(bytes, StandardCharsets.UTF_8);
        if (utf8.indexOf(REPLACED) < 0) {
            return utf8;
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }
}
