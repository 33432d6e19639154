package evenfall.report.command;

import evenfall.fusion.landing.Side;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.log.ApprovalEntry.Approval;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.CoachNotes;
import evenfall.report.log.FilmEntry;
import evenfall.report.log.LandingNote;
import evenfall.report.log.NotesTable;
import evenfall.report.log.Now;
import evenfall.report.log.RangeNote;
import evenfall.report.log.SessionDate;
import evenfall.report.result.LoggedSessions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Notes what the coach knows of landings. */
@Command(name = "note", addMethodSubcommands = false)
final class NoteCommand implements Task {

    private static final Words WORDS = Words.beside(NoteCommand.class);

    private static final Pattern RANGE = Pattern.compile("([1-9]\\d{0,4})(?:-([1-9]\\d{0,4}))?");

    /** No camera's clock is worse: one part in a hundred is a picture in three seconds. */
    private static final double MOST_DRIFT_PPM = 10_000;

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(names = "--date", required = true, paramLabel = "YYYY-MM-DD[-N]", converter = DateOption.OfSession.class)
    private SessionDate date;

    @Option(names = "--landing", paramLabel = "N[-M]")
    private @Nullable String landing;

    @Option(names = "--notes", paramLabel = "FILE")
    private @Nullable Path table;

    @Option(names = "--side", paramLabel = "SIDE", converter = SideOption.class)
    private @Nullable Side side;

    @Option(names = "--height", paramLabel = "M")
    private @Nullable Double height;

    @Option(names = "--surface", paramLabel = "TEXT")
    private @Nullable String surface;

    @Option(names = "--shoes", paramLabel = "TEXT")
    private @Nullable String shoes;

    @Option(names = "--leave-out", paramLabel = "WHY")
    private @Nullable String leaveOut;

    @Option(names = "--remark", paramLabel = "TEXT")
    private @Nullable String remark;

    @Option(names = "--film", paramLabel = "PATH")
    private @Nullable Path film;

    @Option(names = "--film-starts", paramLabel = "S")
    private @Nullable Double filmStartsS;

    @Option(names = "--film-drift", paramLabel = "PPM")
    private double filmDriftPpm;

    @Option(names = "--baseline", paramLabel = "yes|no")
    private @Nullable String baseline;

    NoteCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        LandingNote note = new LandingNote(side, height, surface, shoes, leaveOut, remark);
        if (film != null) {
            if (landing != null || table != null || !note.saysNothing()) {
                throw new UsageException(WORDS.say("film.alone"));
            }
            return add(filmed(film));
        }
        if (filmStartsS != null) {
            throw new UsageException(WORDS.say("film.starts.alone"));
        }
        if (table != null) {
            if (landing != null || !note.saysNothing() || baseline != null) {
                throw new UsageException(WORDS.say("note.table.alone"));
            }
            return add(CoachNotes.read(table.toString(), TextFile.read(table), console::say));
        }
        if (landing == null) {
            throw new UsageException(WORDS.say("note.which"));
        }
        if (note.saysNothing() && baseline == null) {
            throw new UsageException(WORDS.say("note.nothing"));
        }
        if (height != null && !(height >= 0 && height <= NotesTable.HIGHEST_M)) {
            throw new UsageException(WORDS.say("note.height", String.valueOf(height)));
        }
        RangeNote range = range(landing, note);
        return add(new CoachNotes("command", note.saysNothing() ? List.of() : List.of(range), approvals(range)));
    }

    private int add(CoachNotes said) throws IOException {
        if (said.isEmpty()) {
            throw new UsageException(WORDS.say("note.no.row", said.source()));
        }
        AthleteFolder athlete = log.open(console);
        athlete.locked(console::say, () -> {
            tellIfBeyond(athlete, said);
            said.add(athlete, date, Now.text());
            return date;
        });
        return CommandRunner.DONE;
    }

    /** A note for a landing that a session does not have is kept, and shown nowhere: a slip, most often. */
    private void tellIfBeyond(AthleteFolder athlete, CoachNotes said) throws IOException {
        if (!athlete.session(date).exists() || athlete.session(date).mayBeRecorded()) {
            return;
        }
        Optional<Integer> events = new LoggedSessions(athlete, Progress.NONE, sentence -> {}).eventsStored(date);
        if (events.isPresent() && said.lastLanding() > events.get()) {
            console.say(WORDS.say("note.beyond", date, events.get(), said.lastLanding()));
        }
    }

    private int add(FilmEntry entry) throws IOException {
        AthleteFolder athlete = log.open(console);
        athlete.locked(console::say, () -> athlete.films(date).add(entry));
        return CommandRunner.DONE;
    }

    private FilmEntry filmed(Path path) {
        if (!Files.isRegularFile(path)) {
            throw new UnusableInputException(WORDS.say("film.missing", path));
        }
        if (filmStartsS == null || !Double.isFinite(filmStartsS)) {
            throw new UsageException(WORDS.say("film.starts"));
        }
        if (!(Math.abs(filmDriftPpm) <= MOST_DRIFT_PPM)) {
            throw new UsageException(WORDS.say("film.drift", String.valueOf(filmDriftPpm)));
        }
        return new FilmEntry(Now.text(), path.toAbsolutePath().normalize().toString(), filmStartsS, filmDriftPpm);
    }

    private List<Approval> approvals(RangeNote range) {
        if (baseline == null) {
            return List.of();
        }
        boolean approved = NotesTable.yesOrNo(baseline)
                .orElseThrow(() -> new UsageException(WORDS.say("note.baseline", baseline)));
        return List.of(new Approval(range.first(), range.last(), approved));
    }

    private static RangeNote range(String landing, LandingNote note) {
        Matcher matcher = RANGE.matcher(landing);
        if (matcher.matches()) {
            int first = Integer.parseInt(matcher.group(1));
            int last = matcher.group(2) == null ? first : Integer.parseInt(matcher.group(2));
            if (last >= first) {
                return new RangeNote(first, last, note);
            }
        }
        throw new UsageException(WORDS.say("note.landing", landing));
    }
}
