package evenfall.ingest.wire;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** The wire's test vectors: messages and frames with what they must read as. */
final class WireVectors {

    private static final HexFormat HEX = HexFormat.ofDelimiter(" ").withUpperCase();

    private WireVectors() {}

    /** One vector: what it is, and its bytes as hex. */
    record Vector(String kind, String what, String hex) {

        byte[] bytes() {
            return WireVectors.bytes(hex);
        }

        String[] words() {
            return what.split(" ");
        }

        @Override
        public String toString() {
            return kind + " " + (what.length() > 60 ? what.substring(0, 60) + "…" : what);
        }
    }

    static List<Vector> of(String kind) {
        return all().stream().filter(vector -> vector.kind().equals(kind)).toList();
    }

    static List<Vector> all() {
        try (InputStream in = WireVectors.class.getResourceAsStream("wire-vectors.txt")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(";", -1))
                    .map(cells -> new Vector(cells[0].strip(), cells[1].strip(), cells[2].strip()))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] bytes(String hex) {
        return hex.isEmpty() ? new byte[0] : HEX.parseHex(hex.toUpperCase(Locale.ROOT));
    }

    static String hex(byte[] bytes) {
        return HEX.formatHex(bytes);
    }
}
