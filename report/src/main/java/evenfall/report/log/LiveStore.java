package evenfall.report.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Begins sessions that are recorded straight into the log: their raw files grow in their final place. */
public final class LiveStore {

    private LiveStore() {}

    /**
     * Makes a session's folder with its manifest and an empty folder of raw files; the caller holds the athlete's lock.
     *
     * @param session where; not there yet
     * @param program name and version of the program
     * @param storedAt now, ISO 8601 with offset
     * @return the folder for the raw files
     */
    public static Path begin(SessionFolder session, String program, String storedAt) throws IOException {
        Path parent = session.folder().toAbsolutePath().getParent();
        if (parent == null || session.exists()) {
            throw new IllegalArgumentException("session " + session.date() + " is there already");
        }
        Path hidden = parent.resolve("." + session.date() + WholeFile.TEMPORARY);
        FolderRemoval.of(hidden);
        OwnerOnly.makeFolders(hidden.resolve(SessionFolder.RAW));
        try {
            LogJson.write(
                    hidden.resolve(SessionFolder.MANIFEST),
                    new Manifest(program, session.date().toString(), storedAt, Manifest.WIRE, List.of(), null));
            Files.move(hidden, session.folder());
            WholeFile.syncFolder(parent);
        } finally {
            FolderRemoval.of(hidden);
        }
        return session.folder().resolve(SessionFolder.RAW);
    }

    /** Takes away a session into which nothing at all was recorded: no file of its folder of raw files holds a byte. */
    public static boolean removeIfNothingCame(SessionFolder session, List<Path> rawFiles) throws IOException {
        for (Path file : rawFiles) {
            if (Files.size(file) > 0) {
                return false;
            }
        }
        FolderRemoval.of(session.folder());
        return true;
    }
}
