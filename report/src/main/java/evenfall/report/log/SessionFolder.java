package evenfall.report.log;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** One session of a log: the manifest, the raw files, and the results, which can be thrown away and made again. */
public final class SessionFolder {

    static final String MANIFEST = "session.json";
    static final String RAW = "raw";
    static final String RESULTS = "results";
    /** Who records writes several times a second. */
    private static final Duration LATELY = Duration.ofSeconds(10);

    private final SessionDate date;
    private final Path folder;

    SessionFolder(SessionDate date, Path folder) {
        this.date = date;
        this.folder = folder;
    }

    /** The session's date. */
    public SessionDate date() {
        return date;
    }

    /** The folder. */
    public Path folder() {
        return folder;
    }

    /** Whether the session is in the log. */
    public boolean exists() {
        return Files.isDirectory(folder);
    }

    /** What the folder holds. */
    public Manifest manifest() throws IOException {
        return LogJson.read(folder.resolve(MANIFEST), Manifest.class);
    }

    /** Whether the session may still be recorded: its raw files were written to lately, and nothing was made of them yet. */
    public boolean mayBeRecorded() throws IOException {
        if (!Files.isDirectory(rawFolder()) || Files.isDirectory(folder.resolve(RESULTS))) {
            return false;
        }
        Instant lately = Instant.now().minus(LATELY);
        try (Stream<Path> files = Files.list(rawFolder())) {
            for (Path file : (Iterable<Path>) files::iterator) {
                if (Files.getLastModifiedTime(file).toInstant().isAfter(lately)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The folder of the raw files. */
    public Path rawFolder() {
        return folder.resolve(RAW);
    }

    /** A raw file by its name in the manifest. */
    public Path raw(String name) {
        return folder.resolve(RAW).resolve(name);
    }

    /** Names of raw files that are not, byte for byte, what the manifest says was stored. */
    public List<String> changedRawFiles(Manifest manifest) throws IOException {
        List<String> changed = new ArrayList<>();
        for (RawFile file : manifest.files()) {
            Path raw = raw(file.name());
            if (Files.isRegularFile(raw) && !Checksum.of(raw).equals(file.sha256())) {
                changed.add(file.name());
            }
        }
        return changed;
    }

    /** A stored result, with a mark for each byte that is no text; empty where it was never made or has been thrown away. */
    public Optional<String> result(String name) throws IOException {
        Path file = folder.resolve(RESULTS).resolve(name);
        return Files.isRegularFile(file)
                ? Optional.of(new String(Files.readAllBytes(file), StandardCharsets.UTF_8))
                : Optional.empty();
    }

    /** Where a result lies, or would. */
    public Path resultFile(String name) {
        return folder.resolve(RESULTS).resolve(name);
    }

    /** Stores a result, replacing an earlier one. */
    public void storeResult(String name, String text) throws IOException {
        storeResult(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Stores a result that is written piece by piece, replacing an earlier one. */
    public void storeResult(String name, WholeFile.Body body) throws IOException {
        OwnerOnly.makeFolders(folder.resolve(RESULTS));
        WholeFile.clearAfterTheDead(folder.resolve(RESULTS));
        WholeFile.writePrivate(resultFile(name), body);
    }

    /** Takes a result away that would not agree with newer ones; nothing happens where there is none. */
    public void removeResult(String name) throws IOException {
        Files.deleteIfExists(resultFile(name));
    }
}
