package evenfall.ingest.recorder;

import java.io.IOException;

/** There is no room on the disk. The message is one sentence for a person: where, what is kept, what to do. */
public final class DiskFullException extends IOException {

    private static final long serialVersionUID = 1L;

    public DiskFullException(String message) {
        super(message);
    }

    DiskFullException(String message, Throwable cause) {
        super(message, cause);
    }
}
