package evenfall.report.log;

import java.io.IOException;
import java.nio.file.Path;

/** Another program holds the lock of a part of the log and does not let go. The message is a sentence for a person. */
public final class LogBusyException extends IOException {

    private static final long serialVersionUID = 1L;

    LogBusyException(Path folder) {
        super("Another program is still writing to " + folder + "; let it finish or end it, then try again.");
    }
}
