package evenfall.report.log;

import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.file.Path;

/** A file of the log is missing or cannot be understood; what is there is left as it is. The message is a sentence for a person. */
public final class DamagedFileException extends IOException {

    private static final Words WORDS = Words.beside(DamagedFileException.class);

    private static final long serialVersionUID = 1L;

    DamagedFileException(Path file, String reason, Throwable cause) {
        super(sentence(file, reason), cause);
    }

    DamagedFileException(Path file, String reason) {
        super(sentence(file, reason));
    }

    private static String sentence(Path file, String reason) {
        return WORDS.say("damaged", file, reason);
    }
}
