package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.heed.Standing;
import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.AthleteRemoval;
import evenfall.report.log.Now;
import evenfall.report.log.SessionDate;
import evenfall.report.log.TrainingLog;
import evenfall.report.table.LogText;
import java.io.IOException;
import java.time.LocalDate;
import java.time.Year;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says who an athlete is, or takes the athlete out of the log. */
@Command(name = "athlete", addMethodSubcommands = false)
final class AthleteCommand implements Task {

    private static final Words WORDS = Words.beside(AthleteCommand.class);

    private static final int EARLIEST_BIRTH = 1900;

    private final Console console;

    @Mixin
    private LogFolderOption log;

    @Option(names = "--athlete", paramLabel = "ID")
    private @Nullable String id;

    @Option(names = "--name", paramLabel = "TEXT")
    private @Nullable String name;

    @Option(names = "--born", paramLabel = "YEAR")
    private @Nullable Integer born;

    @Option(names = "--consent", paramLabel = "YYYY-MM-DD", converter = DateOption.OfDay.class)
    private @Nullable LocalDate consent;

    @Option(names = "--guardian", paramLabel = "TEXT")
    private @Nullable String guardian;

    @Option(names = "--clinician-limit", paramLabel = "TEXT")
    private @Nullable String clinicianLimit;

    @Option(names = "--delete")
    private boolean delete;

    @Option(names = "--yes")
    private boolean yes;

    AthleteCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        AthleteEntry given = new AthleteEntry(
                Now.text(), name, born, consent == null ? null : consent.toString(), guardian, clinicianLimit);
        if (id == null) {
            return list(given);
        }
        if (delete) {
            return remove(log.athlete(id), given);
        }
        if (born != null
                && (born < EARLIEST_BIRTH
                        || born > Year.now(ZoneId.systemDefault()).getValue())) {
            throw new UsageException(WORDS.say("athlete.born", born));
        }
        AthleteFolder athlete = NewAthlete.madeIfMissing(log.open(), log.athlete(id), console);
        if (saysSomething(given)) {
            athlete.locked(console::say, () -> athlete.who().add(merged(athlete.lastWho(console::say), given)));
        }
        Optional<AthleteEntry> who = athlete.lastWho(console::say);
        Standing.of(athlete, sentence -> {}).sentences().forEach(console::say);
        print(describe(athlete, who.orElse(new AthleteEntry("", null, null, null, null, null))));
        return CommandRunner.DONE;
    }

    private int list(AthleteEntry given) throws IOException {
        if (delete || saysSomething(given)) {
            throw new UsageException(WORDS.say("athlete.which"));
        }
        TrainingLog all = log.open();
        ResultFile.at(console, null, List.of()).write(out -> LogText.athletes(all, console::say, out));
        return CommandRunner.DONE;
    }

    private boolean saysSomething(AthleteEntry given) {
        return given.name() != null
                || given.born() != null
                || given.consent() != null
                || given.guardian() != null
                || given.clinicianLimit() != null;
    }

    private static AthleteEntry merged(Optional<AthleteEntry> last, AthleteEntry given) {
        if (last.isEmpty()) {
            return given;
        }
        AthleteEntry earlier = last.get();
        return new AthleteEntry(
                given.writtenAt(),
                over(earlier.name(), given.name()),
                given.born() == null ? earlier.born() : given.born(),
                over(earlier.consent(), given.consent()),
                over(earlier.guardian(), given.guardian()),
                over(earlier.clinicianLimit(), given.clinicianLimit()));
    }

    private static @Nullable String over(@Nullable String earlier, @Nullable String later) {
        String value = later == null ? earlier : later;
        return value == null || value.isBlank() ? null : value;
    }

    private int remove(AthleteFolder athlete, AthleteEntry given) throws IOException {
        if (saysSomething(given)) {
            throw new UsageException(WORDS.say("delete.alone"));
        }
        if (!athlete.exists()) {
            throw new UsageException(WORDS.say("delete.nobody", athlete.id()));
        }
        for (SessionDate date : athlete.sessions()) {
            if (athlete.session(date).mayBeRecorded()) {
                throw new UsageException(WORDS.say("delete.recorded", date, athlete.id()));
            }
        }
        AthleteRemoval removal = AthleteRemoval.of(athlete);
        print(WORDS.say("delete.what", athlete.folder(), removal.describe()) + "\n");
        if (!yes && !agreed()) {
            throw new UsageException(WORDS.say("delete.unsure", athlete.id()));
        }
        removal.perform(console::say);
        print(WORDS.say("deleted") + "\n");
        return CommandRunner.DONE;
    }

    @SuppressWarnings("SystemConsoleNull") // a newer platform gives a console that reads nothing: then it is no
    private static boolean agreed() {
        java.io.Console terminal = System.console();
        return terminal != null && "yes".equals(terminal.readLine("%s ", WORDS.say("delete.ask")));
    }

    private static String describe(AthleteFolder athlete, AthleteEntry who) throws IOException {
        StringBuilder text = new StringBuilder(athlete.id()).append('\n');
        line(text, WORDS.say("who.name"), who.name());
        line(text, WORDS.say("who.born"), who.born() == null ? null : who.born().toString());
        line(text, WORDS.say("who.consent"), who.consent());
        line(text, WORDS.say("who.guardian"), who.guardian());
        line(text, WORDS.say("who.limit"), who.clinicianLimit());
        List<?> sessions = athlete.sessions();
        line(
                text,
                WORDS.say("who.sessions"),
                sessions.isEmpty()
                        ? WORDS.say("who.sessions.none")
                        : WORDS.say(
                                "who.sessions.span",
                                sessions.size(),
                                sessions.get(0),
                                sessions.get(sessions.size() - 1)));
        return text.toString();
    }

    private static void line(StringBuilder text, String what, @Nullable String value) {
        text.append("  ")
                .append(what)
                .append(": ")
                .append(value == null ? WORDS.say("who.unknown") : value)
                .append('\n');
    }

    private void print(String text) throws IOException {
        ResultFile.at(console, null, List.of()).write(out -> out.append(text));
    }
}
