package evenfall.report.command;

import evenfall.report.log.AthleteFolder;
import evenfall.report.log.TrainingLog;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The options that name an athlete of a training log. */
@Command
final class LogOptions {

    @Option(
            names = "--log",
            required = true,
            paramLabel = "DIR",
            description = "The training log's folder; made if it is missing.")
    private Path log;

    @Option(
            names = "--athlete",
            required = true,
            paramLabel = "ID",
            description = "The athlete's name in the log: letters, digits, dots, hyphens and underscores.")
    private String athlete;

    /** The athlete's part of the log; the log is made if it is missing. */
    AthleteFolder open() throws IOException {
        if (!TrainingLog.isAthleteId(athlete)) {
            throw new UsageException("--athlete '" + athlete + "' cannot name a folder of the log; use 1 to 64 letters,"
                    + " digits, dots, hyphens and underscores, and begin with a letter or digit.");
        }
        return TrainingLog.open(log).athlete(athlete);
    }
}
