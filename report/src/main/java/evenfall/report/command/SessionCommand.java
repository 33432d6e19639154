package evenfall.report.command;

import evenfall.report.log.AthleteFolder;
import evenfall.report.log.SessionDate;
import evenfall.report.result.LoggedSessions;
import evenfall.report.session.Session;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints one session of the log. */
@Command(name = "session", description = "One session of the log, with its notes and the diary of the day.")
final class SessionCommand implements Task {

    private static final Set<OutputFormat> WRITTEN =
            EnumSet.of(OutputFormat.TABLE, OutputFormat.CSV, OutputFormat.JSON, OutputFormat.HTML);

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(
            names = "--date",
            required = true,
            paramLabel = "YYYY-MM-DD[-N]",
            converter = DateOption.OfSession.class,
            description = "The session.")
    private SessionDate date;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            converter = OutputFormat.Converter.class,
            description = "table (the default), csv, json or html.")
    private OutputFormat format = OutputFormat.TABLE;

    @Option(names = "--out", paramLabel = "PATH", description = "Where the result goes, if not to standard output.")
    private @Nullable Path out;

    SessionCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        OutputFormat written = format.among(WRITTEN);
        ResultFile result = ResultFile.at(console, out, List.of());
        AthleteFolder athlete = log.open();
        LoggedSessions sessions = new LoggedSessions(athlete, console.progress(), console::say);
        // Only the page draws signals; the others do with stored results.
        Session session = written == OutputFormat.HTML ? sessions.withTraces(date) : sessions.summary(date);
        result.write(text -> SessionPrinter.print(session, written, text));
        return CommandRunner.DONE;
    }
}
