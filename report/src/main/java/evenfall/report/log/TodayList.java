package evenfall.report.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Who trains today, in the order they take turns: the file {@code today.json} of a log. Anybody may throw it away. */
public final class TodayList {

    /** One pair of sensors goes round no more. */
    public static final int MOST = 10;

    private static final String FILE = "today.json";

    private final TrainingLog log;

    /** What the file holds. */
    record Content(String writtenAt, List<String> athletes) {

        Content {
            athletes = List.copyOf(athletes);
        }
    }

    /** The list of a log. */
    public TodayList(TrainingLog log) {
        this.log = log;
    }

    /**
     * Who is on it; the first of the log's athletes while nobody said who.
     *
     * @param damaged told, in a sentence, if the file cannot be read
     */
    public List<String> athletes(Consumer<String> damaged) throws IOException {
        List<String> known = log.athletes();
        List<String> listed = new ArrayList<>(known);
        if (Files.isRegularFile(file())) {
            try {
                listed = new ArrayList<>(LogJson.read(file(), Content.class).athletes());
                listed.retainAll(known);
            } catch (DamagedFileException e) {
                damaged.accept(String.valueOf(e.getMessage()));
            }
        }
        return List.copyOf(listed.subList(0, Math.min(MOST, listed.size())));
    }

    /** Says who is on it. */
    public void write(List<String> athletes) throws IOException {
        LogJson.write(file(), new Content(Now.text(), athletes.subList(0, Math.min(MOST, athletes.size()))));
    }

    private Path file() {
        return log.folder().resolve(FILE);
    }
}
