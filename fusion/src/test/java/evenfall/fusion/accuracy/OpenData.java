package evenfall.fusion.accuracy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.GZIPInputStream;

/** Where the open recordings lie, which are no part of the project: {@code EVENFALL_DATA}, or shared/data beside it. */
public final class OpenData {

    private OpenData() {}

    /** The folder of a data set ({@code broad}, {@code sisfall}, {@code landings}), if it is there. */
    public static Optional<Path> folder(String set) {
        String stated = System.getenv("EVENFALL_DATA");
        if (stated != null) {
            return existing(Path.of(stated, set));
        }
        for (Path p = Path.of("").toAbsolutePath(); p != null; p = p.getParent()) {
            Optional<Path> found = existing(p.resolve("shared/data").resolve(set));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Why a set is missing, in words. */
    public static String missing(String set) {
        return "the folder " + set + " of open recordings is not in ../shared/data or EVENFALL_DATA";
    }

    /** Opens a gzipped text file. */
    public static BufferedReader open(Path file) {
        try {
            return new BufferedReader(
                    new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.US_ASCII));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<Path> existing(Path folder) {
        return Files.isDirectory(folder) ? Optional.of(folder) : Optional.empty();
    }
}
