package evenfall.report.command;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.log.TrainingLog;
import evenfall.report.window.CoachWindow;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Opens the coach's window. */
@Command(name = "window", addMethodSubcommands = false)
final class WindowCommand implements Task {

    private static final Words WORDS = Words.beside(WindowCommand.class);

    private final Console console;

    @Option(names = "--log", paramLabel = "DIR")
    private @Nullable Path log;

    @Option(names = "--rehearsal-speed", paramLabel = "X")
    private double speed = 1;

    WindowCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException, InterruptedException {
        if (!(speed > 0) || Double.isInfinite(speed)) {
            throw new UsageException(WORDS.say("window.speed"));
        }
        if (!CoachWindow.hasScreen()) {
            throw new UnusableInputException(WORDS.say("window.screen"));
        }
        Path given = log;
        TrainingLog opened =
                TrainingLog.open(given == null ? Path.of(System.getProperty("user.home", "."), "Evenfall") : given);
        CountDownLatch closed = new CountDownLatch(1);
        try (EndOnSignal signal = new EndOnSignal()) {
            CoachWindow window = new CoachWindow(opened, Voices.find(true, console), speed, closed::countDown);
            signal.tell(window::close);
            window.open();
            closed.await();
            signal.done(CommandRunner.DONE);
        }
        return CommandRunner.DONE;
    }
}
