package evenfall.report.log;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Takes away folders with all that is in them. */
public final class FolderRemoval {

    private FolderRemoval() {}

    /** Takes away what killed programs left half done among the sessions of a folder; the caller holds the athlete's lock. */
    static void ofHalves(Path sessions) throws IOException {
        if (!Files.isDirectory(sessions)) {
            return;
        }
        List<Path> halves = new ArrayList<>();
        try (DirectoryStream<Path> left = Files.newDirectoryStream(sessions, ".*" + WholeFile.TEMPORARY)) {
            left.forEach(halves::add);
        }
        for (Path half : halves) {
            of(half);
        }
    }

    /** Takes away a folder and all in it, if it is there. */
    public static void of(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> all;
        try (Stream<Path> walk = Files.walk(folder)) {
            all = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : all) {
            Files.delete(path);
        }
    }
}
