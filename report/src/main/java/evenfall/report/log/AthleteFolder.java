package evenfall.report.log;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.report.setting.SettingList;
import evenfall.report.setting.Settings;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;

/** One athlete's part of a log: who it is, diary, notes and sessions. */
public final class AthleteFolder {

    private static final Duration PATIENCE = Duration.ofSeconds(30);
    /** Nobody deletes an athlete so many times while one waits. */
    private static final int MOST_DELETIONS = 20;

    private static final String WHO = "athlete";
    private static final String DIARY = "diary";
    private static final String NOTES = "notes";
    private static final String PLANS = "plan";
    private static final String FILMS = "films";
    private static final String BASELINE = "baseline";
    private static final String SESSIONS = "sessions";

    private final String id;
    private final Path folder;

    AthleteFolder(String id, Path folder) {
        this.id = id;
        this.folder = folder;
    }

    /** The athlete's name in the log. */
    public String id() {
        return id;
    }

    /** The folder. */
    public Path folder() {
        return folder;
    }

    /** Whether the athlete is in the log. */
    public boolean exists() {
        return Files.isDirectory(folder.resolve(WHO));
    }

    /** Makes the athlete's folders where they are missing. */
    public void create() throws IOException {
        OwnerOnly.makeFolders(folder.resolve(WHO).toAbsolutePath());
        OwnerOnly.makeFolders(folder.resolve(SESSIONS).toAbsolutePath());
    }

    /** Work that writes to the log. */
    @FunctionalInterface
    public interface Work<T> {
        T perform() throws IOException;
    }

    /**
     * Does work while no other program writes here; the athlete's folders are made where they are missing.
     *
     * @param tell told, in a sentence, if another program has to be waited for
     * @return what the work returns
     */
    public <T> T locked(Consumer<String> tell, Work<T> work) throws IOException {
        LogLock lock = lock(tell);
        try {
            return work.perform();
        } finally {
            lock.close();
        }
    }

    /** Takes the lock; where another program deleted the athlete meanwhile, of folders made anew. */
    private LogLock lock(Consumer<String> tell) throws IOException {
        for (int times = 1; ; times++) {
            create();
            try {
                LogLock lock = LogLock.take(folder, PATIENCE, tell);
                if (guarded(lock)) {
                    return lock;
                }
            } catch (NoSuchFileException e) {
                if (times == MOST_DELETIONS) {
                    throw e;
                }
            }
        }
    }

    /** Whether the folder is still the one that was locked; where it is not, or that cannot be told, the lock is given back. */
    private boolean guarded(LogLock lock) throws IOException {
        boolean kept = false;
        try {
            boolean ours = lock.guards(folder);
            if (ours) {
                FolderRemoval.ofHalves(folder.resolve(SESSIONS));
            }
            kept = ours;
            return ours;
        } finally {
            if (!kept) {
                lock.close();
            }
        }
    }

    /** Who the athlete is, entry by entry. */
    public Entries<AthleteEntry> who() {
        return new Entries<>(folder.resolve(WHO), AthleteEntry.class);
    }

    /** Who the athlete is by the last entry; empty where none was made. */
    public Optional<AthleteEntry> lastWho(Consumer<String> damaged) throws IOException {
        List<AthleteEntry> entries = who().all(damaged);
        return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
    }

    /** What people call the athlete: the name that was noted, else the name in the log. */
    public String calledName(Consumer<String> damaged) throws IOException {
        String name = lastWho(damaged).map(AthleteEntry::name).orElse(null);
        return name == null || name.isBlank() ? id() : name;
    }

    /** The diary of one day. */
    public Entries<DiaryEntry> diary(LocalDate day) {
        return new Entries<>(folder.resolve(DIARY).resolve(day.toString()), DiaryEntry.class);
    }

    /** What holds of the whole diary, by day: entries that a later one corrects are left out. */
    public SortedMap<LocalDate, List<DiaryEntry>> diary(Consumer<String> damaged) throws IOException {
        SortedMap<LocalDate, List<DiaryEntry>> diary = new TreeMap<>();
        for (LocalDate day : diaryDays()) {
            diary.put(day, DiaryEntry.inForce(diary(day).numbered(damaged)));
        }
        return diary;
    }

    /** The days that have an entry in the diary, in order. */
    public List<LocalDate> diaryDays() throws IOException {
        return dates(folder.resolve(DIARY)).stream()
                .filter(date -> date.number() == 0)
                .map(SessionDate::day)
                .toList();
    }

    /** The notes of one session, which need not be there yet. */
    public Entries<NoteEntry> notes(SessionDate date) {
        return new Entries<>(folder.resolve(NOTES).resolve(date.toString()), NoteEntry.class);
    }

    /** What the coach said of landings of one session as part of the baseline. */
    public Entries<ApprovalEntry> approvals(SessionDate date) {
        return new Entries<>(folder.resolve(BASELINE).resolve(date.toString()), ApprovalEntry.class);
    }

    /**
     * What the coach set for this athlete, or for all where nothing is set for this one.
     *
     * @throws UnusableInputException if a settings file cannot be understood; says where and what would be
     */
    public Settings settings(SettingList list) throws IOException {
        return SettingFiles.read(list, Arrays.asList(folder.getParent(), folder));
    }

    /**
     * Writes a settings file for this athlete that explains every setting and changes none; the caller holds the lock.
     *
     * @return the file; empty if there is one already, which stays as it is
     */
    public Optional<Path> writeSettings(SettingList list) throws IOException {
        return SettingFiles.writeStarting(list, folder);
    }

    /** What was said of the landings of one session before they came. */
    public Entries<PlanEntry> plans(SessionDate date) {
        return new Entries<>(folder.resolve(NOTES).resolve(date.toString()).resolve(PLANS), PlanEntry.class);
    }

    /** The film of one session, which need not be there yet; the last entry holds. */
    public Entries<FilmEntry> films(SessionDate date) {
        return new Entries<>(folder.resolve(FILMS).resolve(date.toString()), FilmEntry.class);
    }

    /** The dates of all sessions, in order. */
    public List<SessionDate> sessions() throws IOException {
        return dates(folder.resolve(SESSIONS));
    }

    /** One session, which may not be there yet. */
    public SessionFolder session(SessionDate date) {
        return new SessionFolder(date, folder.resolve(SESSIONS).resolve(date.toString()));
    }

    private static List<SessionDate> dates(Path parent) throws IOException {
        if (!Files.isDirectory(parent)) {
            return List.of();
        }
        List<SessionDate> dates = new ArrayList<>();
        try (DirectoryStream<Path> folders = Files.newDirectoryStream(parent)) {
            for (Path folder : folders) {
                Optional<SessionDate> date =
                        SessionDate.parse(folder.getFileName().toString());
                if (date.isPresent() && Files.isDirectory(folder)) {
                    dates.add(date.get());
                }
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        Collections.sort(dates);
        return List.copyOf(dates);
    }
}
