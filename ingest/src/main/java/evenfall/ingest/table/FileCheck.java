package evenfall.ingest.table;

import evenfall.ingest.recording.UnusableInputException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** What can be said of a file before its content is understood. */
final class FileCheck {

    private FileCheck() {}

    /** Refuses a path that is missing, a folder, no file, not readable or empty. */
    static void regular(Path file, String kind) throws java.io.IOException {
        if (!Files.exists(file)) {
            throw new UnusableInputException(
                    "The " + kind + " " + file + " does not exist; check the name and the folder.");
        }
        if (Files.isDirectory(file)) {
            throw new UnusableInputException("The " + kind + " " + file + " is a folder; name one file inside it.");
        }
        if (!Files.isRegularFile(file)) {
            throw new UnusableInputException(
                    "The " + kind + " " + file + " is not an ordinary file; copy the content into one first.");
        }
        if (!Files.isReadable(file)) {
            throw new UnusableInputException("The " + kind + " " + file
                    + " may not be read by this user; change its permissions or copy it to a folder of your own.");
        }
        if (Files.size(file) == 0) {
            throw new UnusableInputException(
                    "The " + kind + " " + file + " is empty (0 bytes); record or export it again.");
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
