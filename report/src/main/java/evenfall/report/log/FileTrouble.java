package evenfall.report.log;

import evenfall.ingest.recorder.DiskFullException;
import evenfall.ingest.serial.PortGoneException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** What went wrong with a file, in one sentence for a person: what, where, and what to do. */
public final class FileTrouble {

    private FileTrouble() {}

    /** The sentence. */
    public static String sentence(IOException e) {
        if (e instanceof LogBusyException || e instanceof DiskFullException || e instanceof PortGoneException) {
            return String.valueOf(e.getMessage());
        }
        if (e instanceof NoSuchFileException missing) {
            return "There is no file or folder " + missing.getFile() + "; check the path.";
        }
        if (e instanceof AccessDeniedException denied) {
            return "Access to " + denied.getFile() + " is denied; change its permissions or choose another place.";
        }
        if (e instanceof FileSystemException file && file.getFile() != null) {
            return "The file " + file.getFile() + " could not be read or written (" + reason(file)
                    + "); check the disk and choose another place if need be.";
        }
        return "Reading or writing failed (" + e.getMessage() + "); check the disk and try again.";
    }

    private static String reason(FileSystemException e) {
        return e.getReason() == null ? e.getClass().getSimpleName() : e.getReason();
    }
}
