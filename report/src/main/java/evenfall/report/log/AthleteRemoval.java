package evenfall.report.log;

import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Takes everything of one athlete out of a log, for good. */
public final class AthleteRemoval {

    private static final Words WORDS = Words.beside(AthleteRemoval.class);

    private final AthleteFolder athlete;
    private final int sessions;
    private final long files;
    private final long bytes;

    private AthleteRemoval(AthleteFolder athlete, int sessions, long files, long bytes) {
        this.athlete = athlete;
        this.sessions = sessions;
        this.files = files;
        this.bytes = bytes;
    }

    /** Looks at what would go; nothing is deleted yet. */
    public static AthleteRemoval of(AthleteFolder athlete) throws IOException {
        long files = 0;
        long bytes = 0;
        try (Stream<Path> walk = Files.walk(athlete.folder())) {
            for (Path path : (Iterable<Path>) walk.filter(Files::isRegularFile)::iterator) {
                files++;
                bytes += Files.size(path);
            }
        }
        return new AthleteRemoval(athlete, athlete.sessions().size(), files, bytes);
    }

    /** What goes, in words. */
    public String describe() {
        return WORDS.say(
                "removal",
                sessions,
                String.valueOf(sessions),
                files,
                String.valueOf(files),
                Math.max(1, Math.round(bytes / 1024.0)));
    }

    /**
     * Deletes. The athlete is out of the log at one stroke; a program killed meanwhile leaves a hidden folder.
     *
     * @param tell told, in a sentence, if another program has to be waited for
     */
    public void perform(Consumer<String> tell) throws IOException {
        Path hidden = athlete.folder().resolveSibling("." + athlete.id() + ".deleted");
        FolderRemoval.of(hidden);
        athlete.locked(tell, () -> Files.move(athlete.folder(), hidden));
        FolderRemoval.of(hidden);
    }
}
