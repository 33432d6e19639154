package evenfall.report.command;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.result.RecordingInput;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small text files that a person gives: notes and tidy tables. */
final class TextFile {

    private static final Words WORDS = Words.beside(TextFile.class);

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
            throw new UnusableInputException(WORDS.say("text.large", file));
        }
        try {
            return Files.readString(file);
        } catch (MalformedInputException e) {
            throw new UnusableInputException(WORDS.say("text.code", file), e);
        }
    }
}
