package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.captions.Captions;
import evenfall.report.deciding.Outlook;
import evenfall.report.film.Film;
import evenfall.report.film.FilmClock;
import evenfall.report.handout.SessionHandout;
import evenfall.report.html.SessionPage;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.SessionDate;
import evenfall.report.motionbids.MotionFolder;
import evenfall.report.paper.Paper;
import evenfall.report.result.LoggedOutlook;
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.SessionBackground;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import evenfall.report.table.LandingScienceText;
import evenfall.report.table.LogText;
import evenfall.report.table.OutlookText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints one session of the log. */
@Command(name = "session", addMethodSubcommands = false)
final class SessionCommand implements Task {

    private static final Words WORDS = Words.beside(SessionCommand.class);

    private static final Set<OutputFormat> WRITTEN = EnumSet.allOf(OutputFormat.class);

    private static final Set<OutputFormat> WITHOUT_WORDS = EnumSet.of(
            OutputFormat.CSV,
            OutputFormat.SPREADSHEET,
            OutputFormat.SPREADSHEET_COMMA,
            OutputFormat.VTT,
            OutputFormat.MOTION_BIDS);

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD[-N]", converter = DateOption.OfSession.class)
    private @Nullable SessionDate date;

    @Option(names = "--format", paramLabel = "FORMAT", converter = OutputFormat.Converter.class)
    private OutputFormat format = OutputFormat.TABLE;

    @Option(names = "--out", paramLabel = "PATH")
    private @Nullable Path out;

    @Option(names = "--film-starts", paramLabel = "S")
    private @Nullable Double filmStartsS;

    @Option(names = "--science")
    private boolean science;

    SessionCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        OutputFormat written = format.among(WRITTEN);
        SessionDate day = date;
        if (science && (day == null || written != OutputFormat.TABLE)) {
            throw new UsageException(WORDS.say("session.science"));
        }
        if (day == null) {
            return list(written);
        }
        if (written == OutputFormat.MOTION_BIDS) {
            return writeFolder(day);
        }
        Double starts = filmStartsS;
        if (starts != null && !Double.isFinite(starts)) {
            throw new UsageException(WORDS.say("session.film"));
        }
        ResultFile result = ResultFile.at(console, out, List.of());
        AthleteFolder athlete = log.open(console);
        if (athlete.session(day).mayBeRecorded()) {
            console.say(WORDS.say("session.growing", day));
        }
        LoggedSessions sessions = new LoggedSessions(athlete, console.progress(), console::say);
        // Only pages draw signals, and only a scientist asks for figures of them; the others do with stored results.
        boolean drawn = written == OutputFormat.HTML || written == OutputFormat.PDF;
        Session read = drawn || science ? sessions.withTraces(day) : sessions.summary(day);
        Session session = drawn ? read.named(athlete.calledName(sentence -> {})) : read;
        sayFirst(written, session);
        FilmClock clock = written == OutputFormat.VTT ? clock(athlete, day, starts) : FilmClock.SAME;
        Background background =
                drawn ? SessionBackground.of(athlete, day, sessions.diary(), console::say) : Background.NONE;
        if (written == OutputFormat.PDF) {
            Paper paper = SessionHandout.of(SessionPage.view(session, background));
            result.writeBytes(paper::write);
            return CommandRunner.DONE;
        }
        result.write(text -> {
            if (written == OutputFormat.VTT) {
                Captions.write(session, clock, text);
            } else {
                SessionPrinter.print(session, background, written, text);
                if (written == OutputFormat.TABLE) {
                    outlook(sessions, day, session, text);
                    if (science) {
                        LandingScienceText.write(session, text);
                    }
                }
            }
        });
        return CommandRunner.DONE;
    }

    /** What stands first is said where the format has no place for it. */
    private void sayFirst(OutputFormat written, Session session) {
        if (WITHOUT_WORDS.contains(written)) {
            session.standing().sentences().forEach(console::say);
            FoundWrong.say(session, console);
        }
    }

    private void outlook(LoggedSessions sessions, SessionDate day, Session session, Appendable text)
            throws IOException {
        Optional<Outlook> outlook = LoggedOutlook.after(log.open(console), sessions, day, session, console::say);
        if (outlook.isPresent()) {
            text.append('\n');
            OutlookText.next(outlook.get().next(), text);
        }
    }

    private int list(OutputFormat written) throws IOException {
        if (written != OutputFormat.TABLE) {
            throw new UsageException(WORDS.say("session.which"));
        }
        AthleteFolder athlete = log.open(console);
        ResultFile.at(console, out, List.of()).write(text -> LogText.sessions(athlete, console::say, text));
        return CommandRunner.DONE;
    }

    private FilmClock clock(AthleteFolder athlete, SessionDate day, @Nullable Double starts) throws IOException {
        Film film = starts == null ? SessionBackground.film(athlete, day, console::say) : null;
        return film == null ? new FilmClock(starts == null ? 0 : starts, 0) : film.clock();
    }

    private int writeFolder(SessionDate day) throws IOException {
        if (out == null) {
            throw new UsageException(WORDS.say("session.folder"));
        }
        LoggedSessions sessions = sessions();
        Session session = sessions.summary(day);
        sayFirst(OutputFormat.MOTION_BIDS, session);
        MotionFolder.write(session, sessions.recording(day), out);
        return CommandRunner.DONE;
    }

    private LoggedSessions sessions() throws IOException {
        return new LoggedSessions(log.open(console), console.progress(), console::say);
    }
}
