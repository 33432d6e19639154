package evenfall.ingest.recording;

/**
 * The input cannot be used. The message is one sentence for a person: what is wrong, where, and what to do.
 *
 * <p>Thrown for bad data only; a caller's mistake is an {@link IllegalArgumentException}, a failing disk an
 * {@link java.io.IOException}.
 */
public final class UnusableInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public UnusableInputException(String message) {
        super(message);
    }

    public UnusableInputException(String message, Throwable cause) {
        super(message, cause);
    }
}
