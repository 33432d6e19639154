package evenfall.report.result;

import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recorder.KeptRecording;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.form.FormStandard;
import evenfall.report.form.LimitSettings;
import evenfall.report.json.AnalysisReader;
import evenfall.report.json.LandingsDocument;
import evenfall.report.log.ApprovalEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.LandingNote;
import evenfall.report.log.Manifest;
import evenfall.report.log.RawFile;
import evenfall.report.log.SessionDate;
import evenfall.report.log.SessionFolder;
import evenfall.report.log.SessionStore;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.Session;
import evenfall.report.setting.Settings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The sessions of one athlete with their results: stored ones are read, missing ones and those of an older version are
 * made again from the raw files, which never change.
 */
public final class LoggedSessions {

    private static final Words WORDS = Words.beside(LoggedSessions.class);

    /** The results of a session, beside its raw files. */
    public static final String DOCUMENT = "landings.json";

    /** The page that is kept as a recording ends; it shows the results of that moment. */
    public static final String PAGE = "page.html";

    /** What a session in the log is always analysed with. */
    private static final FilterKind FILTER = FilterKind.TWO_PASS;

    private final AthleteFolder athlete;
    private final Progress progress;
    private final Consumer<String> tell;
    private final Map<SessionDate, RecordingAnalysis> known;
    private final LoggedDiary diary;
    private @Nullable FormStandard standard;
    private boolean limitsUnreadable;

    /**
     * The sessions of an athlete.
     *
     * @param progress told how far long work has come
     * @param tell told in a sentence of what a person should know: results made again, files passed over
     */
    public LoggedSessions(AthleteFolder athlete, Progress progress, Consumer<String> tell) {
        this(athlete, progress, once(tell), new LoggedDiary(athlete, tell), new HashMap<>());
    }

    /** A session is read for its own sake and for what is usual: what is wrong with it is said once. */
    private static Consumer<String> once(Consumer<String> tell) {
        Set<String> told = ConcurrentHashMap.newKeySet();
        return sentence -> {
            if (told.add(sentence)) {
                tell.accept(sentence);
            }
        };
    }

    private LoggedSessions(
            AthleteFolder athlete,
            Progress progress,
            Consumer<String> tell,
            LoggedDiary diary,
            Map<SessionDate, RecordingAnalysis> known) {
        this.athlete = athlete;
        this.progress = progress;
        this.tell = tell;
        this.diary = diary;
        this.known = known;
    }

    /** The same sessions, with all that was read of them, without a word of what is passed over. */
    LoggedSessions silent() throws IOException {
        LoggedSessions silent = new LoggedSessions(athlete, Progress.NONE, sentence -> {}, diary, known);
        silent.standard = standard(false);
        silent.limitsUnreadable = limitsUnreadable;
        return silent;
    }

    /** The athlete's diary, as the sessions show it. */
    public LoggedDiary diary() {
        return diary;
    }

    /**
     * Analyses recorded files and puts them into the log as they are; the caller holds the athlete's lock.
     *
     * @param date the session's date, not in the log yet
     * @param storedAt now, ISO 8601 with offset
     * @return the session with its traces
     */
    public Session store(SessionDate date, RecordingInput input, String storedAt) throws IOException {
        RecordingAnalysis analysis = SessionReading.analyse(input, FILTER, progress);
        String document = document(input.names(), analysis);
        Map<String, Path> files = new LinkedHashMap<>();
        files.put("pelvis", input.pelvis());
        if (input.upperBack() != null) {
            files.put("upper-back", input.upperBack());
        }
        if (input.layout() != null) {
            files.put("layout", input.layout());
        }
        SessionStore.store(
                athlete.session(date),
                ProgramVersion.PROGRAM + " " + ProgramVersion.version(),
                storedAt,
                files,
                Map.of(DOCUMENT, document));
        keepTraces(athlete.session(date), document, analysis);
        known.put(date, analysis.withoutTraces());
        return session(date, input.names(), analysis, false);
    }

    /** A session as tables show it, from stored results where they are of this version; without traces. */
    public Session summary(SessionDate date) throws IOException {
        SessionFolder folder = present(date);
        Manifest manifest = folder.manifest();
        List<String> names = names(manifest);
        return session(date, names, analysis(folder, manifest), true);
    }

    private RecordingAnalysis analysis(SessionFolder folder, Manifest manifest) throws IOException {
        RecordingAnalysis read = known.get(folder.date());
        if (read == null) {
            Optional<RecordingAnalysis> stored = stored(folder);
            read = stored.isPresent() ? stored.get() : made(folder, manifest).withoutTraces();
            known.put(folder.date(), read);
        }
        return read;
    }

    /** A session by its stored results; empty where it has none of this version, for nothing is made again. */
    public Optional<Session> asStored(SessionDate date) throws IOException {
        SessionFolder folder = present(date);
        RecordingAnalysis read = known.get(date);
        Optional<RecordingAnalysis> stored = read == null ? stored(folder) : Optional.of(read);
        return stored.isEmpty()
                ? Optional.empty()
                : Optional.of(session(date, names(folder.manifest()), stored.get(), false));
    }

    /** A session with its traces: stored ones of stored results, else analysed from the raw files. */
    public Session withTraces(SessionDate date) throws IOException {
        SessionFolder folder = present(date);
        Manifest manifest = folder.manifest();
        Optional<String> document = folder.result(DOCUMENT);
        Optional<RecordingAnalysis> stored = stored(folder, document);
        Optional<Map<Integer, LandingTrace>> traces =
                stored.isEmpty() ? Optional.empty() : StoredTraces.read(folder, document.orElseThrow());
        if (traces.isEmpty()) {
            return session(date, names(manifest), made(folder, manifest), true);
        }
        tellOfChanged(folder, manifest);
        return session(date, names(manifest), stored.orElseThrow().withTraces(traces.get()), true);
    }

    /** The samples of a session, read from its raw files. */
    public Recording recording(SessionDate date) throws IOException {
        SessionFolder folder = present(date);
        Manifest manifest = folder.manifest();
        return manifest.kind().equals(Manifest.WIRE)
                ? KeptRecording.read(folder.rawFolder(), progress)
                : tables(folder, manifest).read(progress);
    }

    private SessionFolder present(SessionDate date) throws IOException {
        SessionFolder folder = athlete.session(date);
        if (!folder.exists()) {
            List<SessionDate> dates = athlete.sessions();
            throw new UnusableInputException(
                    dates.isEmpty()
                            ? WORDS.say("session.first", date, athlete.id())
                            : WORDS.say("session.none", date, athlete.id(), dates.get(dates.size() - 1)));
        }
        return folder;
    }

    private Optional<RecordingAnalysis> stored(SessionFolder folder) throws IOException {
        return stored(folder, folder.result(DOCUMENT));
    }

    private Optional<RecordingAnalysis> stored(SessionFolder folder, Optional<String> document) {
        if (document.isEmpty()) {
            return Optional.empty();
        }
        Optional<RecordingAnalysis> stored = AnalysisReader.read(document.get(), ProgramVersion.version(), FILTER);
        if (stored.isEmpty()) {
            String version = AnalysisReader.version(document.get()).orElse(ProgramVersion.version());
            tell.accept(
                    version.equals(ProgramVersion.version())
                            ? WORDS.say("results.unread", folder.date())
                            : WORDS.say("results.old", folder.date(), version));
        }
        return stored;
    }

    private RecordingAnalysis made(SessionFolder folder, Manifest manifest) throws IOException {
        if (manifest.kind().equals(Manifest.WIRE)) {
            return madeLive(folder, manifest);
        }
        RecordingInput input = tables(folder, manifest);
        tellOfChanged(folder, manifest);
        RecordingAnalysis analysis = SessionReading.analyse(input, FILTER, progress);
        keep(folder, manifest, analysis);
        return analysis;
    }

    private void tellOfChanged(SessionFolder folder, Manifest manifest) throws IOException {
        for (String name : folder.changedRawFiles(manifest)) {
            tell.accept(WORDS.say("raw.changed", name, folder.date()));
        }
    }

    private static RecordingInput tables(SessionFolder folder, Manifest manifest) {
        if (!manifest.kind().equals(Manifest.TABLES)) {
            throw new UnusableInputException(WORDS.say("session.kind", folder.date(), manifest.kind()));
        }
        for (RawFile file : manifest.files()) {
            if (!Files.isRegularFile(folder.raw(file.name()))) {
                throw new UnusableInputException(
                        WORDS.say("raw.missing", file.name(), folder.date(), folder.rawFolder()));
            }
        }
        return new RecordingInput(
                required(folder, manifest), file(folder, manifest, "upper-back"), file(folder, manifest, "layout"));
    }

    /**
     * Analyses a session that was recorded just now and stores its results; the caller holds the athlete's lock, and hands
     * the session to {@link #keepSignals} when nobody waits any more.
     *
     * @param recording what its raw files hold
     * @return the session with its traces
     */
    public Session recorded(SessionDate date, Recording recording) throws IOException {
        SessionFolder folder = present(date);
        List<String> names = names(folder.manifest());
        RecordingAnalysis analysis = SessionReading.analyse(recording, FILTER, progress);
        folder.storeResult(DOCUMENT, document(names, analysis));
        known.put(date, analysis.withoutTraces());
        return session(date, names, analysis, false);
    }

    /** Stores the signals of a session that was {@link #recorded}; the caller holds the athlete's lock. */
    public void keepSignals(SessionDate date, Session recorded) throws IOException {
        SessionFolder folder = present(date);
        Optional<String> document = folder.result(DOCUMENT);
        if (document.isPresent()) {
            keepTraces(folder, document.get(), recorded.analysis());
        }
    }

    /**
     * A session as it would be if its recording ended here; nothing is stored.
     *
     * @param recording what came of it so far
     */
    public Session soFar(SessionDate date, Recording recording) throws IOException {
        return session(
                date, names(present(date).manifest()), SessionReading.analyse(recording, FILTER, progress), false);
    }

    private RecordingAnalysis madeLive(SessionFolder folder, Manifest manifest) throws IOException {
        boolean growing = KeptRecording.beingWritten(folder.rawFolder());
        Recording recording = KeptRecording.read(folder.rawFolder(), progress);
        RecordingAnalysis analysis = SessionReading.analyse(recording, FILTER, progress);
        if (!growing) {
            keep(folder, manifest, analysis);
        }
        return analysis;
    }

    /** Stores results that can be made again at any time: a full disk must not keep anybody from seeing them. */
    private void keep(SessionFolder folder, Manifest manifest, RecordingAnalysis analysis) {
        try {
            String document = document(names(manifest), analysis);
            folder.storeResult(DOCUMENT, document);
            folder.removeResult(PAGE);
            StoredTraces.store(folder, document, analysis.traces());
        } catch (IOException e) {
            tell.accept(WORDS.say("results.unstored", folder.date(), String.valueOf(e.getMessage())));
        }
    }

    /** Stores the signals of a session whose results are stored: without them its pages only take longer. */
    private void keepTraces(SessionFolder folder, String document, RecordingAnalysis analysis) {
        try {
            StoredTraces.store(folder, document, analysis.traces());
        } catch (IOException e) {
            tell.accept(WORDS.say("charts.unstored", folder.date(), String.valueOf(e.getMessage())));
        }
    }

    private static Path required(SessionFolder folder, Manifest manifest) {
        Path pelvis = file(folder, manifest, "pelvis");
        if (pelvis == null) {
            throw new UnusableInputException(WORDS.say("session.pelvis", folder.date()));
        }
        return pelvis;
    }

    private static @Nullable Path file(SessionFolder folder, Manifest manifest, String role) {
        return manifest.files().stream()
                .filter(file -> file.role().equals(role))
                .map(file -> folder.raw(file.name()))
                .findFirst()
                .orElse(null);
    }

    private static List<String> names(Manifest manifest) {
        if (manifest.kind().equals(Manifest.WIRE)) {
            return List.of("recorded live");
        }
        return manifest.files().stream()
                .filter(file -> !"layout".equals(file.role()))
                .map(RawFile::original)
                .toList();
    }

    private Session session(SessionDate date, List<String> names, RecordingAnalysis analysis, boolean again)
            throws IOException {
        Map<Integer, LandingNote> notes = SessionNotes.of(athlete, date, analysis, tell);
        return Session.of(
                        athlete.id(),
                        date.toString(),
                        names,
                        analysis,
                        FILTER,
                        standard(again),
                        notes,
                        approved(date),
                        diary.days().getOrDefault(date.day(), List.of()))
                .under(diary.standing());
    }

    /**
     * What the athlete is judged by, once for all sessions.
     *
     * @param again whether results that are missing or of an older version are made again for it; else nothing keeps anybody
     *     waiting
     */
    FormStandard standard(boolean again) throws IOException {
        FormStandard found = standard;
        if (found == null) {
            found = AthleteStandard.of(athlete, settings(), date -> again ? madeAgain(date) : kept(date));
            standard = found;
        }
        return found;
    }

    /** Limits that cannot be understood are told and passed over: nobody should be kept from seeing what hurts by a slip of the pen. */
    private Settings settings() throws IOException {
        try {
            return athlete.settings(LimitSettings.LIST);
        } catch (UnusableInputException e) {
            limitsUnreadable = true;
            tell.accept(WORDS.say("limits.unread", String.valueOf(e.getMessage())));
            return Settings.starting(LimitSettings.LIST);
        }
    }

    /** Whether the coach's limits could not be understood, so that a landing may have been judged by others. */
    boolean limitsUnreadable() throws IOException {
        standard(false);
        return limitsUnreadable;
    }

    /** The results of a session, made again if need be; none while it is being recorded. */
    private Optional<RecordingAnalysis> madeAgain(SessionDate date) throws IOException {
        SessionFolder folder = athlete.session(date);
        Manifest manifest = folder.manifest();
        boolean growing = manifest.kind().equals(Manifest.WIRE) && KeptRecording.beingWritten(folder.rawFolder());
        return growing ? Optional.empty() : Optional.of(analysis(folder, manifest));
    }

    /** The results of a session as far as they are kept. */
    private Optional<RecordingAnalysis> kept(SessionDate date) throws IOException {
        RecordingAnalysis read = known.get(date);
        if (read != null) {
            return Optional.of(read);
        }
        Optional<String> document = athlete.session(date).result(DOCUMENT);
        Optional<RecordingAnalysis> stored = document.isEmpty()
                ? Optional.empty()
                : AnalysisReader.read(document.get(), ProgramVersion.version(), FILTER);
        stored.ifPresent(analysis -> known.put(date, analysis));
        return stored;
    }

    private Set<Integer> approved(SessionDate date) throws IOException {
        return ApprovalEntry.approved(athlete.approvals(date).all(tell));
    }

    /** What is stored is what was measured; whoever reads it judges it anew, so here it is by what a coach starts from. */
    private static String document(List<String> names, RecordingAnalysis analysis) {
        return LandingsDocument.of(
                Session.of(null, null, names, analysis, FILTER, FormStandard.STARTING, Map.of(), Set.of(), List.of()));
    }
}
