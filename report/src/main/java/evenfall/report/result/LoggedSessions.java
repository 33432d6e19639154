package evenfall.report.result;

import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.form.FormStandard;
import evenfall.report.form.LimitSettings;
import evenfall.report.log.ApprovalEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.LandingNote;
import evenfall.report.log.SessionDate;
import evenfall.report.log.SessionFolder;
import evenfall.report.log.SessionStore;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.Session;
import evenfall.report.setting.Settings;
import java.io.IOException;
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
        RecordingAnalysis analysis = SessionReading.analyse(input, KeptResults.FILTER, progress);
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
                Map.of(DOCUMENT, KeptResults.document(input.names(), analysis)));
        results(athlete.session(date)).keepTraces(analysis);
        known.put(date, analysis.withoutTraces());
        return session(date, input.names(), analysis, false);
    }

    /** A session as tables show it, from stored results where they are of this version; without traces. */
    public Session summary(SessionDate date) throws IOException {
        SessionFolder folder = present(date);
        RawSession raw = raw(folder);
        return session(date, raw.names(), analysis(folder, raw), true);
    }

    private RecordingAnalysis analysis(SessionFolder folder, RawSession raw) throws IOException {
        RecordingAnalysis read = known.get(folder.date());
        if (read == null) {
            Optional<RecordingAnalysis> stored = results(folder).read();
            read = stored.isPresent() ? stored.get() : made(folder, raw).withoutTraces();
            known.put(folder.date(), read);
        }
        return read;
    }

    /** A session by its stored results; empty where it has none of this version, for nothing is made again. */
    public Optional<Session> asStored(SessionDate date) throws IOException {
        SessionFolder folder = present(date);
        RecordingAnalysis read = known.get(date);
        Optional<RecordingAnalysis> stored = read == null ? results(folder).read() : Optional.of(read);
        return stored.isEmpty()
                ? Optional.empty()
                : Optional.of(session(date, raw(folder).names(), stored.get(), false));
    }

    /** How many events the stored results of a session hold; empty where it has none of this version. Nothing is judged for it. */
    public Optional<Integer> eventsStored(SessionDate date) throws IOException {
        return kept(date).map(analysis -> analysis.landings().size());
    }

    /** A session with its traces: stored ones of stored results, else analysed from the raw files. */
    public Session withTraces(SessionDate date) throws IOException {
        SessionFolder folder = present(date);
        RawSession raw = raw(folder);
        raw.beginCheck();
        Optional<RecordingAnalysis> stored = results(folder).readWithTraces();
        if (stored.isEmpty()) {
            return session(date, raw.names(), made(folder, raw), true);
        }
        // Judging goes on while raw files are still being looked at.
        Session session = session(date, raw.names(), stored.get(), true);
        raw.tellOfChanged();
        return session;
    }

    /** The samples of a session, read from its raw files. */
    public Recording recording(SessionDate date) throws IOException {
        return raw(present(date)).read(progress);
    }

    private RawSession raw(SessionFolder folder) throws IOException {
        return new RawSession(folder, tell);
    }

    private KeptResults results(SessionFolder folder) {
        return new KeptResults(folder, tell);
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

    private RecordingAnalysis made(SessionFolder folder, RawSession raw) throws IOException {
        boolean growing = raw.growing();
        raw.tellOfChanged();
        RecordingAnalysis analysis = SessionReading.analyse(raw.read(progress), KeptResults.FILTER, progress);
        if (!growing) {
            results(folder).keep(raw.names(), analysis);
        }
        return analysis;
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
        List<String> names = raw(folder).names();
        RecordingAnalysis analysis = SessionReading.analyse(recording, KeptResults.FILTER, progress);
        results(folder).store(names, analysis);
        known.put(date, analysis.withoutTraces());
        return session(date, names, analysis, false);
    }

    /** Stores the signals of a session that was {@link #recorded}; the caller holds the athlete's lock. */
    public void keepSignals(SessionDate date, Session recorded) throws IOException {
        results(present(date)).keepTraces(recorded.analysis());
    }

    /**
     * A session as it would be if its recording ended here; nothing is stored.
     *
     * @param recording what came of it so far
     */
    public Session soFar(SessionDate date, Recording recording) throws IOException {
        return session(
                date,
                raw(present(date)).names(),
                SessionReading.analyse(recording, KeptResults.FILTER, progress),
                false);
    }

    private Session session(SessionDate date, List<String> names, RecordingAnalysis analysis, boolean again)
            throws IOException {
        Map<Integer, LandingNote> notes = SessionNotes.of(athlete, date, analysis, tell);
        return Session.of(
                        athlete.id(),
                        date.toString(),
                        names,
                        analysis,
                        KeptResults.FILTER,
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
        RawSession raw = raw(folder);
        return raw.growing() ? Optional.empty() : Optional.of(analysis(folder, raw));
    }

    /** The results of a session as far as they are kept. */
    private Optional<RecordingAnalysis> kept(SessionDate date) throws IOException {
        RecordingAnalysis read = known.get(date);
        if (read != null) {
            return Optional.of(read);
        }
        Optional<RecordingAnalysis> stored = new KeptResults(athlete.session(date), sentence -> {}).read();
        stored.ifPresent(analysis -> known.put(date, analysis));
        return stored;
    }

    private Set<Integer> approved(SessionDate date) throws IOException {
        return ApprovalEntry.approved(athlete.approvals(date).all(tell));
    }
}
