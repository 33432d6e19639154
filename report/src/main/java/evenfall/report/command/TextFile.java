package evenfall.report.command;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.report.result.RecordingInput;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small text files that a person gives: notes and tidy tables. */
final class TextFile {

    /** Larger than any table of notes or landings of one athlete. */
    private static final long LARGEST = 64L << 20;

    private TextFile() {}

    /**
     * The text of a file in UTF-8.
     *
     * @throws UnusableInputException if it is missing, too large or not UTF-8
     */
    static String read(Path file) throws IOException {
        RecordingInput.requireFile(file);
        if (Files.size(file) > LARGEST) {
            throw new UnusableInputException(file + " is larger than 64 MB and no table of notes; check the path.");
        }
        try {
            return Files.readString(file);
        } catch (MalformedInputException e) {
            throw new UnusableInputException(file + " is not UTF-8 text; save it as CSV in UTF-8.", e);
        }
    }
}
