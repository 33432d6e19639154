package evenfall.report.log;

import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.StreamReadException;

/** The log's JSON files: strict when read, so that a damaged or newer file is named and not half understood. */
final class LogJson {

    private static final Words WORDS = Words.beside(LogJson.class);

    /** Bytes; what people enter is a thousandth of that. */
    private static final long LARGEST = 64L << 20;

    private LogJson() {}

    /** Writes a record as a file of the log. */
    static void write(Path file, Object value) throws IOException {
        WholeFile.writePrivate(file, RecordJson.write(value).replace("\r\n", "\n") + "\n");
    }

    /**
     * Reads a record from a file.
     *
     * @throws DamagedFileException if it is not what this program writes
     */
    static <T> T read(Path file, Class<T> type) throws IOException {
        try {
            if (Files.size(file) > LARGEST) {
                throw new DamagedFileException(file, WORDS.say("damaged.large"));
            }
            String text = Files.readString(file);
            if (text.isBlank()) {
                throw new DamagedFileException(file, WORDS.say("damaged.empty"));
            }
            return RecordJson.read(text, type);
        } catch (NoSuchFileException e) {
            throw new DamagedFileException(file, WORDS.say("damaged.missing"), e);
        } catch (CharacterCodingException e) {
            throw new DamagedFileException(file, WORDS.say("damaged.text"), e);
        } catch (StreamReadException e) {
            throw new DamagedFileException(file, WORDS.say("damaged.json"), e);
        } catch (JacksonException | IllegalArgumentException e) {
            throw new DamagedFileException(file, WORDS.say("damaged.field"), e);
        } catch (DamagedFileException e) {
            throw e;
        } catch (IOException e) {
            throw new DamagedFileException(
                    file, WORDS.say("damaged.unread", e.getClass().getSimpleName()), e);
        }
    }
}
