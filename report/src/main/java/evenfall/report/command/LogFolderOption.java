package evenfall.report.command;

import evenfall.report.log.AthleteFolder;
import evenfall.report.log.TrainingLog;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The option that names a training log. */
@Command(addMethodSubcommands = false)
final class LogFolderOption {

    @Option(names = "--log", required = true, paramLabel = "DIR")
    private Path log;

    /** The log; made if it is missing. */
    TrainingLog open() throws IOException {
        return TrainingLog.open(log);
    }

    /** An athlete's part of the log, which is not made if it is missing. */
    AthleteFolder athlete(String id) throws IOException {
        if (!TrainingLog.isAthleteId(id)) {
            throw LogOptions.noId(id);
        }
        return open().athlete(id);
    }

    /** The log, if it is there. */
    boolean exists() {
        return Files.isDirectory(log);
    }

    /** As it was named. */
    Path folder() {
        return log;
    }
}
