package evenfall.report.command;

import evenfall.fusion.event.EventKind;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.NoteEntry;
import evenfall.report.log.NotesTable;
import evenfall.report.log.Now;
import evenfall.report.log.RangeNote;
import evenfall.report.log.SessionDate;
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.RecordingInput;
import evenfall.report.session.Session;
import evenfall.report.turn.Consent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Puts recorded files into the log. */
@Command(
        name = "import",
        description =
                "Copies recorded files into the log, unchanged, analyses them, and stores the results beside them.")
final class ImportCommand implements Task {

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(
            names = "--date",
            required = true,
            paramLabel = "YYYY-MM-DD[-N]",
            converter = DateOption.OfSession.class,
            description = "The day; -2 and so on for further sessions of that day.")
    private SessionDate date;

    @Mixin
    private RecordingOptions recording;

    @Option(
            names = "--notes",
            paramLabel = "FILE",
            description = "Table landing,side,height_m,surface,shoes,leave_out,remark of what is known of landings.")
    private @Nullable Path notes;

    ImportCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        RecordingInput input = recording.files();
        List<RangeNote> ranges = notes == null ? List.of() : NotesTable.read(notes.toString(), TextFile.read(notes));
        AthleteFolder athlete = log.open();
        Session session = athlete.locked(console::say, () -> store(athlete, input, ranges));
        Consent.remind(athlete, console::say);
        long landings = session.landings().stream()
                .filter(event -> event.landing().kind() == EventKind.LANDING)
                .count();
        Path place = athlete.session(date).folder();
        ResultFile.at(console, null, List.of())
                .write(out -> out.append(landings + (landings == 1 ? " landing of " : " landings of ") + athlete.id()
                        + " on " + date + " stored in " + place + ".\n"));
        return CommandRunner.DONE;
    }

    private Session store(AthleteFolder athlete, RecordingInput input, List<RangeNote> ranges) throws IOException {
        if (athlete.session(date).exists()) {
            throw new UsageException("The log holds a session " + date + " of " + athlete.id()
                    + " already, and nothing is overwritten; give this one --date " + free(athlete) + ".");
        }
        String now = Now.text();
        if (!ranges.isEmpty()) {
            athlete.notes(date).add(new NoteEntry(now, String.valueOf(notes), ranges));
        }
        return new LoggedSessions(athlete, console.progress(), console::say).store(date, input, now);
    }

    private SessionDate free(AthleteFolder athlete) {
        SessionDate candidate = date.next();
        while (athlete.session(candidate).exists()) {
            candidate = candidate.next();
        }
        return candidate;
    }
}
