package evenfall.report.command;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recorder.ReadableWire;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.serial.Link;
import evenfall.ingest.serial.SerialPorts;
import evenfall.ingest.words.Words;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.log.AthleteFolder;
import evenfall.report.speech.Speech;
import evenfall.report.speech.Unspoken;
import evenfall.report.turn.BeforeDrops;
import evenfall.report.turn.Consent;
import evenfall.report.turn.LaterWork;
import evenfall.report.turn.Turn;
import evenfall.report.turn.TurnVoice;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Records live into the log and shows each landing once. */
@Command(name = "record", addMethodSubcommands = false)
final class RecordCommand implements Task {

    private static final Words WORDS = Words.beside(RecordCommand.class);

    private static final Set<OutputFormat> WRITTEN = EnumSet.of(OutputFormat.TABLE, OutputFormat.JSON);

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(names = "--port", paramLabel = "PATH")
    private List<String> ports = new ArrayList<>();

    @Option(names = "--baud", paramLabel = "N")
    private @Nullable Integer baud;

    @Option(names = "--seconds", paramLabel = "N")
    private double seconds = Double.POSITIVE_INFINITY;

    @Option(names = "--format", paramLabel = "FORMAT", converter = OutputFormat.Converter.class)
    private OutputFormat format = OutputFormat.TABLE;

    @Option(names = "--talk", paramLabel = "WHEN")
    private String talk = TalkChoice.EVERY.code();

    @Option(names = "--speak")
    private boolean speak;

    RecordCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException, InterruptedException {
        OutputFormat written = format.among(WRITTEN);
        if ((baud != null && baud <= 0) || !(seconds > 0)) {
            throw new UsageException(WORDS.say("record.above.zero"));
        }
        TalkChoice choice =
                TalkChoice.named(talk).orElseThrow(() -> new UsageException(WORDS.say("record.talk", talk)));
        if (ports.isEmpty() || ports.stream().anyMatch(String::isBlank)) {
            throw new UsageException(PortChoice.sentence(SerialPorts.free()));
        }
        if (new HashSet<>(ports).size() < ports.size()) {
            throw new UsageException(WORDS.say("record.twice"));
        }
        List<Link> open = open();
        try (EndOnSignal signal = new EndOnSignal();
                Speech speech = Voices.find(speak, console);
                LaterWork later = new LaterWork(console::say)) {
            // A signal ends the program as soon as this is over, so what went wrong is said before.
            int code =
                    CommandRunner.answer(console, () -> round(open, written, choice, new Round(signal, speech, later)));
            signal.done(code);
            return code;
        } finally {
            open.forEach(Link::close);
        }
    }

    /** What lasts longer than a turn. */
    private record Round(EndOnSignal signal, Speech speech, LaterWork later) {}

    /** One turn after another, until nobody is next. */
    private int round(List<Link> open, OutputFormat written, TalkChoice choice, Round round)
            throws IOException, InterruptedException {
        CoachDesk desk = new CoachDesk(console, log);
        ConsoleOnlooker onlooker = new ConsoleOnlooker(console, written);
        long start = System.nanoTime();
        boolean allWritten = true;
        boolean anything = false;
        Turn turn = turn(onlooker, log.open(console), choice, round);
        while (true) {
            double left = seconds - (System.nanoTime() - start) * 1e-9;
            TypedLead lead = new TypedLead(begun(turn, left), left, desk, round.signal(), console);
            turn.record(open, lead);
            allWritten &= turn.written();
            boolean empty = turn.removeIfNothingCame();
            if (lead.next().isEmpty()) {
                return end(turn, empty, anything, round) && allWritten && onlooker.shown()
                        ? CommandRunner.DONE
                        : CommandRunner.FAILED;
            }
            Turn over = turn;
            turn = turn(onlooker, lead.next().get(), over.voice().choice(), round);
            TurnVoice now = turn.voice();
            if (empty) {
                console.say(nothingCame());
            } else {
                anything = true;
                round.later().add(() -> over.store(Progress.NONE, now.landed() ? Unspoken.WISHED : round.speech()));
            }
        }
    }

    private Turn turn(ConsoleOnlooker onlooker, AthleteFolder athlete, TalkChoice choice, Round round)
            throws IOException {
        Consent.remind(athlete, console::say);
        BeforeDrops.tell(athlete, console::say);
        return new Turn(onlooker, athlete, choice, round.speech());
    }

    private static String begun(Turn turn, double left) {
        return WORDS.say(
                Double.isInfinite(left) ? "record.begun" : "record.begun.timed",
                turn.athlete().id(),
                turn.session().folder());
    }

    /** Ends the last turn; says whether all earlier ones could be stored. */
    private boolean end(Turn turn, boolean empty, boolean anything, Round round) throws IOException {
        boolean stored = round.later().await();
        if (!empty) {
            turn.store(console.progress(), round.speech());
        } else if (anything) {
            console.say(nothingCame());
        } else {
            throw new UnusableInputException(nothingCame());
        }
        return stored;
    }

    private String nothingCame() {
        return WORDS.say("record.nothing", String.join(" " + WORDS.say("record.and") + " ", ports));
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
}
