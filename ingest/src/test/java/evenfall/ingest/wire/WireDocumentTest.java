package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page that tells the wire shows the very frames the tests read, all of them and no others. */
class WireDocumentTest {

    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([0-9A-F]{2}(?: [0-9A-F]{2})*)` \\| [^`|]+ \\|$");
    private static final int LONGEST_SHOWN = 12;

    private final String page;

    WireDocumentTest() throws IOException {
        page = Files.readString(Path.of("..", "docs", "wire.md"));
    }

    @Test
    void itsWorkedFramesAreTheVectors() {
        List<String> frames = WireVectors.all().stream()
                .filter(vector -> !vector.kind().equals("crc") && !vector.kind().equals("cobs"))
                .map(WireVectors.Vector::hex)
                .toList();

        assertThat(ROW.matcher(page).results().map(row -> row.group(1))).containsExactlyElementsOf(frames);
    }

    @Test
    void itsStuffedMessagesAreTheVectors() {
        for (WireVectors.Vector vector : WireVectors.of("cobs")) {
            if (vector.bytes().length <= LONGEST_SHOWN) {
                String message = vector.what().isEmpty() ? "nothing" : "`" + vector.what() + "`";
                assertThat(page).contains("| " + message + " | `" + vector.hex() + "` |");
            }
        }
    }

    @Test
    void itsChecksumsAreTheVectors() {
        for (WireVectors.Vector vector : WireVectors.of("crc")) {
            if (vector.bytes().length <= 4
                    && !vector.what().isEmpty()
                    && vector.what().length() < 12) {
                assertThat(page)
                        .contains("`" + vector.what() + "` " + vector.hex().replace(" ", ""));
            }
        }
    }
}
