package evenfall.ingest.table;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Tells by the first bytes of a file what it is not: another compression, a document, binary. */
final class Encodings {

    private static final Words WORDS = Words.beside(Encodings.class);

    /** The first bytes of a kind of file, and what to do about it. */
    private record Foreign(String magic, String what, String remedy) {}

    // The published signatures of these formats, as Latin-1 text.
    private static final List<Foreign> FOREIGN = List.of(
            new Foreign(
                    "PK\3\4", "a zip archive or a spreadsheet", "unpack it, or export the sheet as CSV, and give that"),
            new Foreign("PK\5\6", "an empty zip archive", "give the table file itself"),
            new Foreign("\u00FD7zXZ\0", "compressed with xz", "unpack it (unxz) or compress it as gz"),
            new Foreign("BZh", "compressed with bzip2", "unpack it (bunzip2) or compress it as gz"),
            new Foreign("(\u00B5/\u00FD", "compressed with zstd", "unpack it (unzstd) or compress it as gz"),
            new Foreign("\4\42M\30", "compressed with lz4", "unpack it (unlz4) or compress it as gz"),
            new Foreign("7z\u00BC\u00AF'\34", "a 7z archive", "unpack it and give the table file"),
            new Foreign("Rar!", "a rar archive", "unpack it and give the table file"),
            new Foreign("\37\u009D", "compressed with compress", "unpack it (uncompress) or compress it as gz"),
            new Foreign("%PDF", "a PDF document", "give the table file it was made from"),
            new Foreign("\u00D0\u00CF\u0011\u00E0", "an old spreadsheet", "export the sheet as CSV and give that"),
            new Foreign("\u0089HDF", "an HDF5 or MAT container", "export the samples as CSV and give that"),
            new Foreign("MATLAB 5.0", "a MAT container", "export the samples as CSV and give that"),
            new Foreign("SQLite format 3", "a database", "export the samples as CSV and give that"),
            new Foreign("\u0089PNG", "a picture", "give the table file of the recording"),
            new Foreign("RIFF", "a sound or film file", "give the table file of the recording"));

    private Encodings() {}

    /** Refuses what is plainly something else than a table. */
    static void refuseForeign(byte[] head, String name) {
        String text = new String(head, StandardCharsets.ISO_8859_1);
        for (Foreign foreign : FOREIGN) {
            if (text.startsWith(foreign.magic())) {
                throw new UnusableInputException(WORDS.say("foreign", name, foreign.what(), foreign.remedy()));
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
