package evenfall.report.command;

import evenfall.report.log.AthleteArchive;
import evenfall.report.log.AthleteFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes everything of one athlete into one file. */
@Command(
        name = "export",
        description =
                "Everything of one athlete in one zip file: to keep a copy, or to 'import' it on another machine.",
        footer = {"", "The file holds health data: it is made readable by its owner only. Keep it so."})
final class ExportCommand implements Task {

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(names = "--out", required = true, paramLabel = "FILE.zip", description = "The file.")
    private Path out;

    ExportCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        ResultFile.at(console, out, List.of());
        AthleteFolder athlete = log.find();
        if (!athlete.exists()) {
            throw new UsageException("There is no athlete " + athlete.id() + " in the log; nothing was exported.");
        }
        Path folder = athlete.folder().toAbsolutePath().normalize();
        if (out.toAbsolutePath().normalize().startsWith(folder)) {
            throw new UsageException("--out " + out + " lies in the folder that is exported; choose a place outside.");
        }
        int files = AthleteArchive.write(athlete, out, console::say);
        ResultFile.at(console, null, List.of())
                .write(text -> text.append("All of " + athlete.id() + ", " + Archives.sessions(athlete) + " and "
                        + files + " files, is in " + out
                        + ". It holds health data: keep it where only you can read it.\n"));
        return CommandRunner.DONE;
    }
}
