package evenfall.report.command;

import java.io.IOException;

/** Whoever read standard output has had enough of it: no failure, the command just ends. */
final class OutputClosedException extends IOException {

    private static final long serialVersionUID = 1L;

    OutputClosedException() {
        super("nobody reads standard output any more");
    }
}
