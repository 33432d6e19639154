package evenfall.ingest.serial;

import evenfall.ingest.words.Words;
import java.io.IOException;

/** A port that was written to is gone. The message is one sentence for a person: which, and what to do. */
public final class PortGoneException extends IOException {

    private static final Words WORDS = Words.beside(PortGoneException.class);

    private static final long serialVersionUID = 1L;

    PortGoneException(String name) {
        super(WORDS.say("gone", name));
    }
}
