package evenfall.report.log;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Everything of one athlete as one zip file: the athlete's folder as it is, without what is hidden. */
public final class AthleteArchive {

    private AthleteArchive() {}

    /**
     * Writes the archive while no other program writes to the athlete's folder.
     *
     * @param file where; replaced only once all is on disk, and readable by its owner only
     * @param tell told, in a sentence, if another program has to be waited for
     * @return how many files it holds
     */
    public static int write(AthleteFolder athlete, Path file, Consumer<String> tell) throws IOException {
        return athlete.locked(tell, () -> {
            List<Path> files = files(athlete.folder());
            WholeFile.writePrivate(file, out -> zip(athlete, files, out));
            return files.size();
        });
    }

    private static void zip(AthleteFolder athlete, List<Path> files, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(new Unclosed(out));
        for (Path file : files) {
            ZipEntry entry = new ZipEntry(athlete.id() + "/"
                    + athlete.folder().relativize(file).toString().replace('\\', '/'));
            entry.setLastModifiedTime(Files.getLastModifiedTime(file));
            zip.putNextEntry(entry);
            Files.copy(file, zip);
            zip.closeEntry();
        }
        zip.finish();
        zip.flush();
    }

    /** The files of a folder, in order; what is hidden, or lies in a hidden folder, is left out. */
    private static List<Path> files(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) walk.sorted()::iterator) {
                if (Files.isRegularFile(file) && !hidden(folder.relativize(file))) {
                    files.add(file);
                }
            }
        }
        return files;
    }

    private static boolean hidden(Path path) {
        for (Path name : path) {
            if (name.toString().startsWith(".")) {
                return true;
            }
        }
        return false;
    }

    /** Who opened the file closes it. */
    private static final class Unclosed extends FilterOutputStream {

        Unclosed(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            out.write(bytes, offset, length);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }
}
