package evenfall.report.log;

import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.file.Path;

/** Another program holds the lock of a part of the log and does not let go. The message is a sentence for a person. */
public final class LogBusyException extends IOException {

    private static final Words WORDS = Words.beside(LogBusyException.class);

    private static final long serialVersionUID = 1L;

    LogBusyException(Path folder) {
        super(WORDS.say("busy", folder));
    }
}
