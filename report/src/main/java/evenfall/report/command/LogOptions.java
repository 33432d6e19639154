package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.TrainingLog;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The options that name an athlete of a training log. */
@Command(addMethodSubcommands = false)
final class LogOptions {

    private static final Words WORDS = Words.beside(LogOptions.class);

    @Option(names = "--log", required = true, paramLabel = "DIR")
    private Path log;

    @Option(names = "--athlete", required = true, paramLabel = "ID")
    private String athlete;

    /** The athlete's part of the log; both are made if they are missing. */
    AthleteFolder open(Console console) throws IOException {
        return NewAthlete.madeIfMissing(TrainingLog.open(log), find(), console);
    }

    /** The athlete's part of the log, which is not made if it is missing. */
    AthleteFolder find() throws IOException {
        return find(athlete);
    }

    /** Another athlete's part of the same log, which is not made if it is missing. */
    AthleteFolder find(String id) throws IOException {
        if (!TrainingLog.isAthleteId(id)) {
            throw noId(id);
        }
        return TrainingLog.open(log).athlete(id);
    }

    static UsageException noId(String id) {
        return new UsageException(WORDS.say("athlete.id", id));
    }
}
