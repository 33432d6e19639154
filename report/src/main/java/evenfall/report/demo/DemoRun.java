package evenfall.report.demo;

import evenfall.fixtures.demo.DemoBlock;
import evenfall.fixtures.demo.DemoDiaryEntry;
import evenfall.fixtures.demo.DemoSession;
import evenfall.ingest.progress.Progress;
import evenfall.report.block.Block;
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
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.RecordingInput;
import evenfall.report.sentence.SessionSentence;
import evenfall.report.session.Session;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/** Makes recordings, log and pages of the invented block in one folder; several sessions at once. */
public final class DemoRun {

    private static final long SEED = 4;
    private static final String BLOCK_FILE = "block.html";
    private static final String INDEX_FILE = "index.html";
    private static final String RECORDINGS = "recordings";

    private final Path folder;
    private final Progress progress;
    private final Consumer<String> tell;
    private final AtomicInteger done = new AtomicInteger();

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
        progress.at("inventing recordings", 0);
        DemoBlock demo = DemoBlock.write(folder.resolve(RECORDINGS), SEED);
        AthleteFolder athlete =
                TrainingLog.open(folder.resolve("log")).athlete(demo.athlete().id());
        if (athlete.exists()) {
            AthleteRemoval.of(athlete).perform(tell);
        }
        String name = demo.athlete().name();
        try {
            List<DemoPage.Entry> entries = athlete.locked(tell, () -> fill(athlete, demo));
            progress.at("drawing the block", 1);
            Block block = LoggedBlock.of(athlete, new LoggedSessions(athlete, Progress.NONE, tell), null, null, tell);
            Block named = new Block(name, block.sessions(), block.landings(), block.measures(), block.formHeight());
            page(BLOCK_FILE, out -> BlockPage.write(named, athlete.diary(tell), out));
            page(INDEX_FILE, out -> DemoPage.write(name, demo.athlete().place(), BLOCK_FILE, entries, out));
        } catch (UncheckedIOException e) {
            throw new IOException(e.getMessage(), e);
        }
        return folder.resolve(INDEX_FILE);
    }

    private List<DemoPage.Entry> fill(AthleteFolder athlete, DemoBlock demo) throws IOException {
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
        int all = demo.sessions().size();
        return demo.sessions().parallelStream()
                .map(session -> {
                    try {
                        DemoPage.Entry entry =
                                session(athlete, session, demo.athlete().name());
                        told(all);
                        return entry;
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                })
                .toList();
    }

    private DemoPage.Entry session(AthleteFolder athlete, DemoSession demo, String name) throws IOException {
        SessionDate date = SessionDate.parse(demo.date())
                .orElseThrow(() -> new IllegalStateException("the demo has a session on " + demo.date()));
        String notes = Files.readString(demo.notesFile());
        athlete.notes(date)
                .add(new NoteEntry(
                        at(demo.date()),
                        "notes.csv",
                        NotesTable.read(demo.notesFile().toString(), notes)));
        RecordingInput input = new RecordingInput(demo.pelvis(), demo.upperBack(), null);
        Session stored = new LoggedSessions(athlete, Progress.NONE, tell).store(date, input, at(demo.date()));
        Session session = new Session(
                name,
                stored.date(),
                stored.sources(),
                stored.analysis(),
                stored.filter(),
                stored.landings(),
                stored.diary());
        String file = "session-" + demo.date() + ".html";
        page(file, out -> SessionPage.write(session, out));
        return new DemoPage.Entry(demo.date(), file, SessionSentence.of(session));
    }

    private synchronized void told(int all) {
        progress.at("importing and drawing sessions", (double) done.incrementAndGet() / all);
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

    /** A page that is written. */
    @FunctionalInterface
    private interface Page {
        void writeTo(Appendable out) throws IOException;
    }
}
