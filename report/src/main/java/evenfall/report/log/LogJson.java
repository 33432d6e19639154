package evenfall.report.log;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The log's JSON files: strict when read, so that a damaged or newer file is named and not half understood. */
final class LogJson {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .enable(EnumFeature.WRITE_ENUMS_TO_LOWERCASE)
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .build();

    /** Bytes; what people enter is a thousandth of that. */
    private static final long LARGEST = 64L << 20;

    private LogJson() {}

    /** Writes a record as a file of the log. */
    static void write(Path file, Object value) throws IOException {
        WholeFile.writePrivate(file, MAPPER.writeValueAsString(value).replace("\r\n", "\n") + "\n");
    }

    /**
     * Reads a record from a file.
     *
     * @throws DamagedFileException if it is not what this program writes
     */
    static <T> T read(Path file, Class<T> type) throws IOException {
        try {
            if (Files.size(file) > LARGEST) {
                throw new DamagedFileException(file, "it is far larger than any this program writes");
            }
            String text = Files.readString(file);
            T value = text.isBlank() ? null : MAPPER.treeToValue(withLaterFields(MAPPER.readTree(text)), type);
            if (value == null) {
                throw new DamagedFileException(file, "it is empty");
            }
            return value;
        } catch (NoSuchFileException e) {
            throw new DamagedFileException(file, "it is missing", e);
        } catch (CharacterCodingException e) {
            throw new DamagedFileException(file, "it is not UTF-8 text", e);
        } catch (StreamReadException e) {
            throw new DamagedFileException(file, "it is not whole JSON", e);
        } catch (JacksonException | IllegalArgumentException e) {
            throw new DamagedFileException(file, "a field is missing, unknown or holds what it cannot", e);
        } catch (DamagedFileException e) {
            throw e;
        } catch (IOException e) {
            throw new DamagedFileException(
                    file, "it cannot be read: " + e.getClass().getSimpleName(), e);
        }
    }

    /** Files written before a field was thought of say nothing there. */
    private static JsonNode withLaterFields(JsonNode node) {
        if (node instanceof ObjectNode object && object.has("soreness") && !object.has("corrects")) {
            object.putNull("corrects");
        }
        return node;
    }
}
