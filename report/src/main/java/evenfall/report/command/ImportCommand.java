package evenfall.report.command;

import evenfall.fusion.event.EventKind;
import evenfall.ingest.words.Words;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.CoachNotes;
import evenfall.report.log.Now;
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
import picocli.CommandLine.Parameters;

/** Puts recorded files, or an athlete that was exported, into the log. */
@Command(
        name = "import",
        addMethodSubcommands = false,
        customSynopsis = {
            "evenfall import --log DIR --athlete ID --date YYYY-MM-DD[-N] --pelvis FILE [--upper-back FILE]",
            "                [--layout FILE] [--notes FILE]",
            "evenfall import --log DIR [--athlete ID] FILE.zip"
        })
final class ImportCommand implements Task {

    private static final Words WORDS = Words.beside(ImportCommand.class);

    private final Console console;

    @Mixin
    private LogFolderOption log;

    @Option(names = "--athlete", paramLabel = "ID")
    private @Nullable String athlete;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD[-N]", converter = DateOption.OfSession.class)
    private @Nullable SessionDate date;

    @Option(names = "--pelvis", paramLabel = "FILE")
    private @Nullable Path pelvis;

    @Option(names = "--upper-back", paramLabel = "FILE")
    private @Nullable Path upperBack;

    @Option(names = "--layout", paramLabel = "FILE")
    private @Nullable Path layout;

    @Option(names = "--notes", paramLabel = "FILE")
    private @Nullable Path notes;

    @Parameters(arity = "0..1", paramLabel = "FILE.zip")
    private @Nullable Path archive;

    ImportCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        if (archive != null) {
            if (date != null || pelvis != null || upperBack != null || layout != null || notes != null) {
                throw new UsageException(WORDS.say("import.whole"));
            }
            AthleteFolder imported = Archives.read(console, log.open(), archive, athlete);
            print(WORDS.say("imported", imported.id(), Archives.sessions(imported), imported.folder()) + "\n");
            return CommandRunner.DONE;
        }
        importRecording(required("--athlete=ID", athlete), required("--date=YYYY-MM-DD[-N]", date), pelvis());
        return CommandRunner.DONE;
    }

    private void importRecording(String id, SessionDate day, Path table) throws IOException {
        RecordingInput input = new RecordingInput(table, upperBack, layout);
        CoachNotes said = notes == null
                ? new CoachNotes("", List.of(), List.of())
                : CoachNotes.read(notes.toString(), TextFile.read(notes), console::say);
        input.all().forEach(RecordingInput::requireFile);
        AthleteFolder folder = NewAthlete.madeIfMissing(log.open(), log.athlete(id), console);
        Session session = folder.locked(console::say, () -> store(folder, day, input, said));
        FoundWrong.say(session, console);
        DateOption.tellIfAhead(day.day(), console);
        Consent.remind(folder, console::say);
        long landings = session.landings().stream()
                .filter(event -> event.landing().kind() == EventKind.LANDING)
                .count();
        print(WORDS.say(
                        "import.stored",
                        landings,
                        String.valueOf(landings),
                        folder.id(),
                        day,
                        folder.session(day).folder())
                + "\n");
    }

    private Path pelvis() {
        return required("--pelvis=FILE", pelvis);
    }

    private static <T> T required(String option, @Nullable T value) {
        if (value == null) {
            throw new UsageException(WORDS.say("import.required", option));
        }
        return value;
    }

    private Session store(AthleteFolder folder, SessionDate day, RecordingInput input, CoachNotes said)
            throws IOException {
        if (folder.session(day).exists()) {
            throw new UsageException(WORDS.say("import.taken", day, folder.id(), free(folder, day)));
        }
        String now = Now.text();
        said.add(folder, day, now);
        return new LoggedSessions(folder, console.progress(), console::say).store(day, input, now);
    }

    private static SessionDate free(AthleteFolder folder, SessionDate taken) {
        SessionDate candidate = taken.next();
        while (folder.session(candidate).exists()) {
            candidate = candidate.next();
        }
        return candidate;
    }

    private void print(String text) throws IOException {
        ResultFile.at(console, null, List.of()).write(out -> out.append(text));
    }
}
