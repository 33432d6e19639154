package evenfall.report.log;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Checksums of raw files: SHA-256 (FIPS 180-4), 64 hexadecimal digits. */
final class Checksum {

    private Checksum() {}

    /** The checksum of a file. */
    static String of(Path file) throws IOException {
        return copy(file, OutputStream.nullOutputStream());
    }

    /** Copies a file into a stream, which stays open; gives the checksum of what went through. */
    static String copy(Path from, OutputStream to) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream in = Files.newInputStream(from)) {
            in.transferTo(new DigestOutputStream(to, digest));
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
