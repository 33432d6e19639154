package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.log.ArchiveImport;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.TrainingLog;
import evenfall.report.result.RecordingInput;
import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Takes in what was exported. */
final class Archives {

    private static final Words WORDS = Words.beside(Archives.class);

    private Archives() {}

    static AthleteFolder read(Console console, TrainingLog log, Path archive, @Nullable String name)
            throws IOException {
        RecordingInput.requireFile(archive);
        if (name != null && !TrainingLog.isAthleteId(name)) {
            throw LogOptions.noId(name);
        }
        return ArchiveImport.read(log, archive, name, console::say);
    }

    /** {@code 1 session}, {@code 7 sessions}. */
    static String sessions(AthleteFolder athlete) throws IOException {
        int count = athlete.sessions().size();
        return WORDS.say("sessions", count, String.valueOf(count));
    }
}
