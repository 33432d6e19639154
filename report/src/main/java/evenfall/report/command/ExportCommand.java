package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.log.AthleteArchive;
import evenfall.report.log.AthleteFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes everything of one athlete into one file. */
@Command(name = "export", addMethodSubcommands = false)
final class ExportCommand implements Task {

    private static final Words WORDS = Words.beside(ExportCommand.class);

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(names = "--out", required = true, paramLabel = "FILE.zip")
    private Path out;

    ExportCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        ResultFile.at(console, out, List.of());
        AthleteFolder athlete = log.find();
        if (!athlete.exists()) {
            throw new UsageException(WORDS.say("export.nobody", athlete.id()));
        }
        Path folder = athlete.folder().toAbsolutePath().normalize();
        if (out.toAbsolutePath().normalize().startsWith(folder)) {
            throw new UsageException(WORDS.say("export.inside", out));
        }
        // An archive may be all that is left of somebody whose folder was deleted.
        if (Files.isRegularFile(out)) {
            throw new UsageException(WORDS.say("export.there", out));
        }
        int files = AthleteArchive.write(athlete, out, console::say);
        ResultFile.at(console, null, List.of())
                .write(text -> text.append(WORDS.say(
                                "exported", athlete.id(), Archives.sessions(athlete), files, String.valueOf(files), out)
                        + "\n"));
        return CommandRunner.DONE;
    }
}
