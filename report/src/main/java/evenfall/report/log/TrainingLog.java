package evenfall.report.log;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.setting.SettingList;
import evenfall.report.setting.Settings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A training log: the folder that holds one folder an athlete. */
public final class TrainingLog {

    private static final Words WORDS = Words.beside(TrainingLog.class);

    /** Letters, digits, dots, hyphens and underscores; begins with a letter or digit, so never leads out of the log. */
    private static final Pattern ID =
            Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{M}\\p{N}._-]{0,62}[\\p{L}\\p{M}\\p{N}_-])?");

    /** Names some systems keep for devices. */
    private static final Set<String> RESERVED = Set.of("con", "prn", "aux", "nul");

    private static final Pattern NUMBERED_DEVICE = Pattern.compile("(?:com|lpt)\\d");

    private final Path folder;

    private TrainingLog(Path folder) {
        this.folder = folder;
    }

    /**
     * The log in a folder, which is made if it is missing.
     *
     * @throws UnusableInputException if there is a file of that name
     */
    public static TrainingLog open(Path folder) throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new UnusableInputException(WORDS.say("not.folder", folder));
        }
        OwnerOnly.makeFolders(folder.toAbsolutePath());
        return new TrainingLog(folder);
    }

    /** The folder. */
    public Path folder() {
        return folder;
    }

    /** Whether a text can name an athlete: 1 to 64 letters, digits, dots, hyphens and underscores, no dot at the ends. */
    public static boolean isAthleteId(String id) {
        String lower = id.toLowerCase(Locale.ROOT);
        int dot = lower.indexOf('.');
        String stem = dot < 0 ? lower : lower.substring(0, dot);
        return ID.matcher(id).matches()
                && !RESERVED.contains(stem)
                && !NUMBERED_DEVICE.matcher(stem).matches();
    }

    /**
     * An athlete's part of the log, which may not be there yet.
     *
     * @throws IllegalArgumentException if {@code id} cannot name an athlete
     */
    public AthleteFolder athlete(String id) {
        if (!isAthleteId(id)) {
            throw new IllegalArgumentException("'" + id + "' cannot name an athlete");
        }
        return new AthleteFolder(id, folder.resolve(id));
    }

    /**
     * What the coach set for all athletes.
     *
     * @throws UnusableInputException if the settings file cannot be understood; says where and what would be
     */
    public Settings settings(SettingList list) throws IOException {
        return SettingFiles.read(list, List.of(folder));
    }

    /**
     * Writes a settings file for all athletes that explains every setting and changes none.
     *
     * @return the file; empty if there is one already, which stays as it is
     */
    public Optional<Path> writeSettings(SettingList list) throws IOException {
        return SettingFiles.writeStarting(list, folder);
    }

    /** The athletes of this log, by name. */
    public List<String> athletes() throws IOException {
        try (Stream<Path> folders = Files.list(folder)) {
            return folders.filter(Files::isDirectory)
                    .map(path -> path.getFileName().toString())
                    .filter(TrainingLog::isAthleteId)
                    .filter(id -> athlete(id).exists())
                    .sorted()
                    .toList();
        }
    }
}
