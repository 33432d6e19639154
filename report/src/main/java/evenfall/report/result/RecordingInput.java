package evenfall.report.result;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.table.RecordingFiles;
import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The files of one recording.
 *
 * @param pelvis the pelvis's table, or one table of both sensors where the layout says so
 * @param upperBack the upper back's table, or null
 * @param layout the layout file, or null where the tables' headers say enough
 */
public record RecordingInput(
        Path pelvis, @Nullable Path upperBack, @Nullable Path layout) {

    private static final Words WORDS = Words.beside(RecordingInput.class);

    /** All files, in the order of the parameters. */
    public List<Path> all() {
        List<Path> files = new ArrayList<>();
        files.add(pelvis);
        if (upperBack != null) {
            files.add(upperBack);
        }
        if (layout != null) {
            files.add(layout);
        }
        return files;
    }

    /** The names of the recorded files, as a person would call them. */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        names.add(String.valueOf(pelvis.getFileName()));
        if (upperBack != null) {
            names.add(String.valueOf(upperBack.getFileName()));
        }
        return names;
    }

    /**
     * Reads the recording.
     *
     * @throws UnusableInputException if a file is missing or cannot be used
     */
    public Recording read(Progress progress) throws IOException {
        all().forEach(RecordingInput::requireFile);
        return RecordingFiles.read(pelvis, upperBack, layout, progress);
    }

    /** Reads one sensor's table. */
    public static SensorRecording readSensor(Path file, @Nullable Path layout, Progress progress) throws IOException {
        requireFile(file);
        if (layout != null) {
            requireFile(layout);
        }
        return RecordingFiles.readSensor(file, layout, progress);
    }

    /**
     * Checks that a file is there to be read.
     *
     * @throws UnusableInputException if it is not
     */
    public static void requireFile(Path file) {
        if (!Files.exists(file)) {
            throw new UnusableInputException(WORDS.say("file.missing", file));
        }
        if (Files.isDirectory(file)) {
            throw new UnusableInputException(WORDS.say("file.folder", file));
        }
        if (!Files.isReadable(file)) {
            throw new UnusableInputException(WORDS.say("file.denied", file));
        }
    }
}
