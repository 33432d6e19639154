package evenfall.report.demo;

import evenfall.fixtures.demo.DemoBlock;
import evenfall.fixtures.demo.DemoDiaryEntry;
import evenfall.fixtures.demo.DemoSession;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.deciding.Outlook;
import evenfall.report.heed.PastPain;
import evenfall.report.html.BlockPage;
import evenfall.report.html.DemoPage;
import evenfall.report.html.SessionPage;
import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.AthleteRemoval;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.NoteEntry;
import evenfall.report.log.NotesTable;
import evenfall.report.log.SessionDate;
import evenfall.report.log.TrainingLog;
import evenfall.report.log.WholeFile;
import evenfall.report.result.LoggedBlock;
import evenfall.report.result.LoggedOutlook;
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.RecordingInput;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** Makes recordings, log and pages of the invented block in one folder; several sessions at once. */
public final class DemoRun {

    private static final Words WORDS = Words.beside(DemoRun.class);

    private static final long SEED = 4;
    private static final String BLOCK_FILE = "block.html";
    private static final String INDEX_FILE = "index.html";
    private static final String RECORDINGS = "recordings";
    private static final LocalTime AFTERNOON = LocalTime.of(17, 30);

    private final Path folder;
    private final Progress progress;
    private final Consumer<String> tell;

    /**
     * A demo in a folder, made if missing; an earlier demo in it is replaced.
     *
     * @param progress told how far the work has come, from one thread at a time
     * @param tell told, in a sentence, what a person should know
     */
    public DemoRun(Path folder, Progress progress, Consumer<String> tell) {
        this.folder = folder;
        this.progress = progress;
        this.tell = tell;
    }

    /**
     * Does it all.
     *
     * @return the page to look at first
     * @throws IOException if a file cannot be written
     */
    public Path perform() throws IOException {
        progress.at(WORDS.say("step.inventing"), 0);
        DemoBlock demo = DemoBlock.write(folder.resolve(RECORDINGS), SEED);
        AthleteFolder athlete =
                TrainingLog.open(folder.resolve("log")).athlete(demo.athlete().id());
        if (athlete.exists()) {
            AthleteRemoval.of(athlete).perform(tell);
        }
        String name = demo.athlete().name();
        List<SessionDate> dates = new ArrayList<>(athlete.locked(tell, () -> fill(athlete, demo)));
        progress.at(WORDS.say("step.live"), 0);
        LiveRehearsal live = new LiveRehearsal();
        dates.add(live(athlete, live, demo));
        // What is usual is told by all sessions, so pages are drawn when all of them are there: each would judge
        // otherwise.
        List<Session> stored = all(
                dates,
                WORDS.say("step.reading"),
                date -> new LoggedSessions(athlete, Progress.NONE, tell)
                        .withTraces(date)
                        .named(name));
        LoggedSessions sessions = new LoggedSessions(athlete, Progress.NONE, tell);
        SortedMap<LocalDate, List<DiaryEntry>> diary = sessions.diary().days();
        List<Integer> order = IntStream.range(0, stored.size()).boxed().toList();
        List<DemoPage.Entry> entries = new ArrayList<>(all(
                order,
                WORDS.say("step.drawing"),
                i -> page(
                        dates.get(i),
                        stored.get(i),
                        new Background(
                                stored.subList(0, i),
                                null,
                                null,
                                PastPain.before(dates.get(i).day(), diary),
                                null,
                                null))));
        progress.at(WORDS.say("step.block"), 1);
        Block block = LoggedBlock.of(athlete, sessions, null, null, tell);
        Outlook outlook = LoggedOutlook.of(athlete, sessions, block, tell);
        diary.forEach((day, entered) -> {
            if (dates.stream().noneMatch(date -> date.day().equals(day))) {
                DemoPage.Entry.of(day, entered).ifPresent(entries::add);
            }
        });
        Block named = block.named(name);
        page(BLOCK_FILE, out -> BlockPage.write(named, diary, outlook, out));
        page(INDEX_FILE, out -> DemoPage.write(name, demo.athlete().place(), BLOCK_FILE, entries, live.heard(), out));
        return folder.resolve(INDEX_FILE);
    }

    private List<SessionDate> fill(AthleteFolder athlete, DemoBlock demo) throws IOException {
        athlete.who()
                .add(new AthleteEntry(
                        at(demo.athlete().consent()),
                        demo.athlete().name(),
                        demo.athlete().born(),
                        demo.athlete().consent(),
                        null,
                        null));
        for (DemoDiaryEntry entry : demo.diary()) {
            athlete.diary(LocalDate.parse(entry.date())).add(diaryEntry(entry));
        }
        List<DemoSession> imported = demo.sessions().subList(0, demo.sessions().size() - 1);
        return all(imported, WORDS.say("step.importing"), session -> session(athlete, session));
    }

    /** Does something with each, several at once; in their order. */
    private <A, B> List<B> all(List<A> each, String doing, Step<A, B> step) throws IOException {
        AtomicInteger done = new AtomicInteger();
        try {
            return each.parallelStream()
                    .map(one -> {
                        try {
                            B result = step.perform(one);
                            told(doing, (double) done.incrementAndGet() / each.size());
                            return result;
                        } catch (IOException e) {
                            throw new UncheckedIOException(e);
                        }
                    })
                    .toList();
        } catch (UncheckedIOException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    private synchronized void told(String doing, double share) {
        progress.at(doing, share);
    }

    private SessionDate session(AthleteFolder athlete, DemoSession demo) throws IOException {
        note(athlete, demo);
        RecordingInput input = new RecordingInput(demo.pelvis(), demo.upperBack(), null);
        new LoggedSessions(athlete, Progress.NONE, tell).store(date(demo), input, at(demo.date()));
        return date(demo);
    }

    /** The last session is recorded live. */
    private static SessionDate live(AthleteFolder athlete, LiveRehearsal live, DemoBlock demo) throws IOException {
        DemoSession last = demo.sessions().get(demo.sessions().size() - 1);
        note(athlete, last);
        Clock now = Clock.system(ZoneId.systemDefault());
        ZonedDateTime then = date(last).day().atTime(AFTERNOON).atZone(ZoneId.systemDefault());
        Clock clock = Clock.offset(now, Duration.between(now.instant(), then.toInstant()));
        Recording said = new RecordingInput(last.pelvis(), last.upperBack(), null).read(Progress.NONE);
        live.record(athlete, said, clock);
        return date(last);
    }

    private static void note(AthleteFolder athlete, DemoSession demo) throws IOException {
        String notes = Files.readString(demo.notesFile());
        athlete.notes(date(demo))
                .add(new NoteEntry(
                        at(demo.date()),
                        "notes.csv",
                        NotesTable.read(demo.notesFile().toString(), notes)));
    }

    private DemoPage.Entry page(SessionDate date, Session stored, Background background) throws IOException {
        String file = "session-" + date + ".html";
        page(file, out -> SessionPage.write(stored, background, out));
        return DemoPage.Entry.of(date, file, stored);
    }

    private static SessionDate date(DemoSession demo) {
        return SessionDate.parse(demo.date())
                .orElseThrow(() -> new IllegalStateException("the demo has a session on " + demo.date()));
    }

    private void page(String file, Page page) throws IOException {
        StringBuilder text = new StringBuilder();
        page.writeTo(text);
        WholeFile.write(folder.resolve(file), out -> out.write(text.toString().getBytes(StandardCharsets.UTF_8)));
    }

    private static DiaryEntry diaryEntry(DemoDiaryEntry entry) {
        return new DiaryEntry(
                at(entry.date()),
                entry.soreness(),
                entry.pain(),
                entry.signs(),
                entry.effort() == null ? null : Double.valueOf(entry.effort()),
                entry.minutes() == null ? null : Double.valueOf(entry.minutes()),
                entry.results(),
                entry.cue(),
                entry.note());
    }

    /** The evening of a day of the story. */
    private static String at(String day) {
        return day + "T19:00:00Z";
    }

    /** Something that is done with one of several. */
    @FunctionalInterface
    private interface Step<A, B> {
        B perform(A one) throws IOException;
    }

    /** A page that is written. */
    @FunctionalInterface
    private interface Page {
        void writeTo(Appendable out) throws IOException;
    }
}
