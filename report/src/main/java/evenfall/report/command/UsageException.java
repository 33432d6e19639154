package evenfall.report.command;

/** The command was called in a way it does not take; the message says how, and what to do. */
final class UsageException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    UsageException(String message) {
        super(message);
    }
}
