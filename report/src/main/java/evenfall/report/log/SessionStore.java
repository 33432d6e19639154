package evenfall.report.log;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts a new session into a log at one stroke: everything is written into a hidden folder, synced, and renamed. A
 * program killed on the way leaves only the hidden folder, which the next one clears away.
 */
public final class SessionStore {

    /** What a stored file may keep of its original name. */
    private static final Pattern EXTENSION = Pattern.compile("(?:\\.[A-Za-z0-9]{1,8}){1,2}$");

    private SessionStore() {}

    /**
     * Stores a session; the caller holds the athlete's lock.
     *
     * @param session where; not there yet
     * @param program name and version of the program
     * @param storedAt now, ISO 8601 with offset
     * @param files the files to copy, by role: {@code pelvis}, {@code upper-back}, {@code layout}
     * @param results results by name
     */
    public static void store(
            SessionFolder session,
            String program,
            String storedAt,
            Map<String, Path> files,
            Map<String, String> results)
            throws IOException {
        Path parent = session.folder().toAbsolutePath().getParent();
        if (parent == null || session.exists()) {
            throw new IllegalArgumentException("session " + session.date() + " is there already");
        }
        Path hidden = parent.resolve("." + session.date() + WholeFile.TEMPORARY);
        FolderRemoval.of(hidden);
        OwnerOnly.makeFolders(hidden.resolve(SessionFolder.RAW));
        try {
            List<RawFile> raw = new ArrayList<>();
            String layout = null;
            for (Map.Entry<String, Path> file : files.entrySet()) {
                RawFile copied = copy(file.getKey(), file.getValue(), hidden.resolve(SessionFolder.RAW));
                raw.add(copied);
                layout = "layout".equals(copied.role()) ? copied.name() : layout;
            }
            WholeFile.syncFolder(hidden.resolve(SessionFolder.RAW));
            SessionFolder inside = new SessionFolder(session.date(), hidden);
            for (Map.Entry<String, String> result : results.entrySet()) {
                inside.storeResult(result.getKey(), result.getValue());
            }
            LogJson.write(
                    hidden.resolve(SessionFolder.MANIFEST),
                    new Manifest(program, session.date().toString(), storedAt, Manifest.TABLES, raw, layout));
            Files.move(hidden, session.folder());
            WholeFile.syncFolder(parent);
        } finally {
            FolderRemoval.of(hidden);
        }
    }

    private static RawFile copy(String role, Path from, Path folder) throws IOException {
        String original = String.valueOf(from.getFileName());
        Matcher extension = EXTENSION.matcher(original);
        String name = role + (extension.find() ? extension.group() : "");
        Path to = folder.resolve(name);
        String checksum;
        try (OutputStream out =
                OwnerOnly.open(to, EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
            checksum = Checksum.copy(from, out);
        }
        WholeFile.sync(to);
        return new RawFile(role, name, original, Files.size(to), checksum);
    }
}
