package evenfall.report.log;

import evenfall.ingest.recorder.DiskFullException;
import evenfall.ingest.serial.PortGoneException;
import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** What went wrong with a file, in one sentence for a person: what, where, and what to do. */
public final class FileTrouble {

    private static final Words WORDS = Words.beside(FileTrouble.class);

    private FileTrouble() {}

    /** The sentence. */
    public static String sentence(IOException e) {
        if (e instanceof LogBusyException || e instanceof DiskFullException || e instanceof PortGoneException) {
            return String.valueOf(e.getMessage());
        }
        if (e instanceof NoSuchFileException missing) {
            return WORDS.say("trouble.missing", missing.getFile());
        }
        if (e instanceof AccessDeniedException denied) {
            return WORDS.say("trouble.denied", denied.getFile());
        }
        if (e instanceof FileSystemException file && file.getFile() != null) {
            return WORDS.say("trouble.file", file.getFile(), reason(file));
        }
        return WORDS.say("trouble", String.valueOf(e.getMessage()));
    }

    private static String reason(FileSystemException e) {
        if (e instanceof FileAlreadyExistsException) {
            return WORDS.say("trouble.taken");
        }
        return e.getReason() == null ? e.getClass().getSimpleName() : e.getReason();
    }
}
