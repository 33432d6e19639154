package evenfall.report.log;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * What people entered, in the order they did: a folder of files {@code 0001.json}, {@code 0002.json} and so on. An
 * entry is added and never changed.
 *
 * @param <T> the record an entry is
 */
public final class Entries<T> {

    private static final Pattern NAME = Pattern.compile("\\d{4,9}\\.json");

    private final Path folder;
    private final Class<T> type;

    Entries(Path folder, Class<T> type) {
        this.folder = folder;
        this.type = type;
    }

    /**
     * Adds an entry; the caller holds the athlete's lock.
     *
     * @return the new file
     */
    public Path add(T entry) throws IOException {
        OwnerOnly.makeFolders(folder);
        WholeFile.clearAfterTheDead(folder);
        List<Path> files = files();
        int last = files.isEmpty() ? 0 : number(files.get(files.size() - 1));
        Path file = folder.resolve(String.format(Locale.ROOT, "%04d.json", last + 1));
        LogJson.write(file, entry);
        return file;
    }

    /**
     * All entries in order.
     *
     * @param damaged told, in a sentence, of each file that had to be passed over
     */
    public List<T> all(Consumer<String> damaged) throws IOException {
        return List.copyOf(numbered(damaged).values());
    }

    /**
     * All entries by their number, in order.
     *
     * @param damaged told, in a sentence, of each file that had to be passed over
     */
    public SortedMap<Integer, T> numbered(Consumer<String> damaged) throws IOException {
        SortedMap<Integer, T> entries = new TreeMap<>();
        for (Path file : files()) {
            try {
                entries.put(number(file), LogJson.read(file, type));
            } catch (DamagedFileException e) {
                damaged.accept(String.valueOf(e.getMessage()));
            }
        }
        return entries;
    }

    private List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>();
        // Most sessions have no entry of most kinds: asking for a folder that is not there is all it costs.
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path file : all) {
                if (NAME.matcher(file.getFileName().toString()).matches()) {
                    files.add(file);
                }
            }
        } catch (NoSuchFileException | NotDirectoryException e) {
            return List.of();
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        files.sort((a, b) -> Integer.compare(number(a), number(b)));
        return files;
    }

    private static int number(Path file) {
        String name = file.getFileName().toString();
        return Integer.parseInt(name.substring(0, name.length() - ".json".length()));
    }
}
