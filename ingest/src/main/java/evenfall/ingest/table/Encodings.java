package evenfall.ingest.table;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Tells by the first bytes of a file what it is not: another compression, a document, binary. */
final class Encodings {

    private static final Words WORDS = Words.beside(Encodings.class);

    /** The first bytes of a kind of file, and the ends of the keys that say what it is and what to do about it. */
    private record Foreign(String magic, String kind, String remedy) {}

    // The published signatures of these formats, as Latin-1 text.
    private static final List<Foreign> FOREIGN = List.of(
            new Foreign("PK\3\4", "zip", "sheet.unpack"),
            new Foreign("PK\5\6", "zip.empty", "itself"),
            new Foreign("\u00FD7zXZ\0", "xz", "xz"),
            new Foreign("BZh", "bzip2", "bzip2"),
            new Foreign("(\u00B5/\u00FD", "zstd", "zstd"),
            new Foreign("\4\42M\30", "lz4", "lz4"),
            new Foreign("7z\u00BC\u00AF'\34", "7z", "unpack"),
            new Foreign("Rar!", "rar", "unpack"),
            new Foreign("\37\u009D", "compress", "compress"),
            new Foreign("%PDF", "pdf", "made.from"),
            new Foreign("\u00D0\u00CF\u0011\u00E0", "sheet", "sheet"),
            new Foreign("\u0089HDF", "hdf5", "samples"),
            new Foreign("MATLAB 5.0", "mat", "samples"),
            new Foreign("SQLite format 3", "database", "samples"),
            new Foreign("\u0089PNG", "picture", "recording"),
            new Foreign("RIFF", "film", "recording"));

    private Encodings() {}

    /** Refuses what is plainly something else than a table. */
    static void refuseForeign(byte[] head, String name) {
        String text = new String(head, StandardCharsets.ISO_8859_1);
        for (Foreign foreign : FOREIGN) {
            if (text.startsWith(foreign.magic())) {
                throw new UnusableInputException(WORDS.say(
                        "foreign",
                        name,
                        WORDS.say("foreign.is." + foreign.kind()),
                        WORDS.say("foreign.do." + foreign.remedy())));
            }
        }
        if (text.length() > 262 && text.startsWith("ustar", 257)) {
            throw new UnusableInputException(WORDS.say("foreign.tar", name));
        }
    }

    /** Refuses bytes that no text holds. */
    static void refuseBinary(byte[] head, String name) {
        int strange = 0;
        for (byte b : head) {
            if (b >= 0 && b < 32 && b != '\t' && b != '\n' && b != '\r' && b != '\f') {
                strange++;
            }
        }
        // One control character in thirty already means that rows are not text.
        if (strange > 0 && strange * 30 >= head.length) {
            throw new UnusableInputException(WORDS.say("foreign.binary", name));
        }
    }

    /** Whether ASCII text stands in every other byte; {@code zeroAt} 1 for little-endian, 0 for big-endian. */
    static boolean looksLikeUtf16(byte[] head, int zeroAt) {
        int pairs = head.length / 2;
        int ascii = 0;
        for (int i = 0; i < pairs; i++) {
            byte zero = head[2 * i + zeroAt];
            byte other = head[2 * i + 1 - zeroAt];
            if (zero == 0 && ((other >= 32 && other < 127) || other == '\n' || other == '\r' || other == '\t')) {
                ascii++;
            }
        }
        return pairs >= 8 && ascii * 10 >= pairs * 9;
    }
}
