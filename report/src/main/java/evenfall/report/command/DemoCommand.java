package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.demo.DemoRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Makes an invented block of training and its pages. */
@Command(name = "demo", addMethodSubcommands = false)
final class DemoCommand implements Task {

    private static final Words WORDS = Words.beside(DemoCommand.class);

    private final Console console;

    @Option(names = "--out", paramLabel = "DIR")
    private Path out = Path.of("evenfall-demo");

    DemoCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new UsageException(WORDS.say("demo.file", out));
        }
        Path page = new DemoRun(out, console.progress(), console::say).perform();
        console.endProgress();
        String place = page.toAbsolutePath().normalize().toUri().toString();
        ResultFile.at(console, null, List.of()).write(text -> text.append(WORDS.say("demo.ready", place) + "\n"));
        return CommandRunner.DONE;
    }
}
