package evenfall.report.command;

import evenfall.ingest.recorder.KeptRecording;
import evenfall.ingest.recorder.ReadableWire;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.serial.Link;
import evenfall.ingest.serial.SerialPorts;
import evenfall.report.form.FormJudge;
import evenfall.report.form.FormLimits;
import evenfall.report.live.DiskReport;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.RecordingNews;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.LiveStore;
import evenfall.report.log.SessionDate;
import evenfall.report.log.SessionFolder;
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.ToldResults;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.Session;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Records live into the log and shows each landing once. */
@Command(
        name = "record",
        description =
                "Records live: shows each landing as soon as it is settled; at the end (Ctrl-C or --seconds) analyses"
                        + " the whole again and stores it under today's date. Not a medical device: pain means stop.")
final class RecordCommand implements Task {

    private static final Set<OutputFormat> WRITTEN = EnumSet.of(OutputFormat.TABLE, OutputFormat.JSON);

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(
            names = "--port",
            paramLabel = "PATH",
            description = "The port of the receiver; again for a second one. Without it those that are free are named.")
    private List<String> ports = new ArrayList<>();

    @Option(names = "--baud", paramLabel = "N", description = "Speed of the ports; without it it is looked for.")
    private @Nullable Integer baud;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description = "Ends so long after the start; without it Ctrl-C ends.")
    private double seconds = Double.POSITIVE_INFINITY;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            converter = OutputFormat.Converter.class,
            description = "table (one line a landing, the default) or json (one object a line).")
    private OutputFormat format = OutputFormat.TABLE;

    RecordCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException, InterruptedException {
        OutputFormat written = format.among(WRITTEN);
        if ((baud != null && baud <= 0) || !(seconds > 0)) {
            throw new UsageException("--baud and --seconds take numbers above 0.");
        }
        if (ports.isEmpty()) {
            throw new UsageException(PortChoice.sentence(SerialPorts.free()));
        }
        List<Link> open = open();
        try (EndOnSignal signal = new EndOnSignal()) {
            AthleteFolder athlete = log.open();
            DiskReport disk = new DiskReport(athlete.folder());
            disk.before().ifPresent(console::say);
            Consent.remind(athlete, console);
            SessionFolder session = athlete.locked(console::say, () -> begin(athlete));
            Path raw = session.rawFolder();
            int code;
            Optional<Recording> whole;
            LiveLandings live = new LiveLandings(new FormJudge(FormLimits.STARTING));
            try (WireRecorder recorder = new WireRecorder(raw, open, Clock.system(ZoneId.systemDefault()))) {
                signal.tell(recorder::end);
                console.say("Recording " + athlete.id() + " into " + session.folder() + "; "
                        + (Double.isInfinite(seconds) ? "Ctrl-C ends." : "it ends by itself."));
                new RecordLoop(
                                console,
                                recorder,
                                new RecordingNews(recorder, open, disk),
                                live,
                                new NewsPrinter(console, written))
                        .run(seconds, signal);
                whole = recorder.whole();
                code = recorder.failure().isPresent() ? CommandRunner.FAILED : CommandRunner.DONE;
            }
            finish(athlete, session, whole, live);
            signal.done(code);
            return code;
        } finally {
            open.forEach(Link::close);
        }
    }

    private List<Link> open() {
        Integer said = baud;
        OptionalInt speed = said == null ? OptionalInt.empty() : OptionalInt.of(said);
        List<Link> open = new ArrayList<>();
        try {
            for (String path : ports) {
                open.add(Link.open(SerialPorts.MACHINE, path, speed, ReadableWire::new));
            }
        } catch (UnusableInputException e) {
            open.forEach(Link::close);
            throw e;
        }
        return open;
    }

    private static SessionFolder begin(AthleteFolder athlete) throws IOException {
        SessionDate date = new SessionDate(LocalDate.now(ZoneId.systemDefault()), 0);
        while (athlete.session(date).exists()) {
            date = date.next();
        }
        SessionFolder session = athlete.session(date);
        LiveStore.begin(session, ProgramVersion.PROGRAM + " " + ProgramVersion.version(), Now.text());
        return session;
    }

    private void finish(AthleteFolder athlete, SessionFolder session, Optional<Recording> recording, LiveLandings live)
            throws IOException {
        if (LiveStore.removeIfNothingCame(session, KeptRecording.files(session.rawFolder()))) {
            throw new UnusableInputException("Nothing came from " + String.join(" and ", ports)
                    + ", so nothing was stored; look whether the sensors are switched on and try again.");
        }
        athlete.locked(console::say, () -> {
            LoggedSessions sessions = new LoggedSessions(athlete, console.progress(), console::say);
            Session whole = recording.isPresent()
                    ? sessions.recorded(session.date(), recording.get())
                    : sessions.summary(session.date());
            ToldResults.store(session, live, whole).forEach(console::say);
            console.say(RecordLoop.landings(whole) + " of " + athlete.id() + " on " + session.date() + " stored in "
                    + session.folder() + ".");
            return session.date();
        });
    }
}
