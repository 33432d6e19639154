package evenfall.report.log;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * What an archive holds, its names checked: all in one folder named like an athlete, none of them leading elsewhere.
 *
 * @param athlete the folder's name
 * @param files by their name in the archive
 */
record ArchiveEntries(String athlete, Map<String, Listed> files) {

    private static final Words WORDS = Words.beside(ArchiveEntries.class);

    /**
     * A file by the list at the archive's end.
     *
     * @param path its path in the athlete's folder
     * @param sum its checksum, CRC-32
     */
    record Listed(String path, long sum) {}

    /** Most files of one athlete: a hundred years of daily sessions. */
    private static final int MOST = 1_000_000;

    ArchiveEntries {
        files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
    }

    /**
     * Looks an archive over.
     *
     * @throws UnusableInputException if it is none of an athlete
     */
    static ArchiveEntries of(Path archive, ZipFile zip) {
        String athlete = null;
        Map<String, Listed> files = new LinkedHashMap<>();
        for (ZipEntry entry : Collections.list(zip.entries())) {
            List<String> parts = List.of(entry.getName().split("/", -1));
            if (entry.isDirectory() && parts.size() == 2) {
                continue;
            }
            boolean plain = parts.size() > 1
                    && parts.stream().allMatch(ArchiveEntries::isPlain)
                    && TrainingLog.isAthleteId(parts.get(0))
                    && (athlete == null || athlete.equals(parts.get(0)));
            if (!plain || entry.isDirectory() || files.size() >= MOST) {
                throw new UnusableInputException(WORDS.say("archive.foreign", archive, entry.getName()));
            }
            athlete = parts.get(0);
            files.put(entry.getName(), new Listed(String.join("/", parts.subList(1, parts.size())), entry.getCrc()));
        }
        if (athlete == null) {
            throw new UnusableInputException(WORDS.say("archive.empty", archive));
        }
        return new ArchiveEntries(athlete, files);
    }

    /**
     * The file of that name.
     *
     * @throws UnusableInputException if the list knows none
     */
    Listed of(Path archive, String name) {
        Listed listed = files.get(name);
        if (listed == null) {
            throw ArchiveImport.damaged(archive, WORDS.say("archive.unlisted", name), null);
        }
        return listed;
    }

    /** A name that stays in its folder on every system, and that the log would show. */
    private static boolean isPlain(String name) {
        return !name.isEmpty()
                && !name.startsWith(".")
                && name.chars()
                        .noneMatch(c -> c < ' ' || c == '\\' || c == ':' || c == '*' || c == '?' || c == '"' || c == '<'
                                || c == '>' || c == '|');
    }
}
