package evenfall.ingest.recorder;

import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** How much room there is for recordings. */
public final class DiskRoom {

    private static final Words WORDS = Words.beside(DiskRoom.class);

    /** Two sensors, each on a line of 921 600 bits a second that is never idle, bytes a second. */
    public static final double FASTEST = 2 * 92_160.0;

    /** With less than this the disk counts as full, bytes. */
    private static final long NOTHING = 1 << 16;

    /** How systems say that a disk is full; source: messages of Linux, macOS and Windows, from memory. */
    private static final List<String> FULL =
            List.of("no space left", "quota exceeded", "not enough space", "disk is full");

    private DiskRoom() {}

    /** For how many minutes the disk of {@code path}, which need not be there yet, has room at so many bytes a second. */
    public static double minutes(Path path, double bytesPerSecond) throws IOException {
        return bytes(path) / bytesPerSecond / 60;
    }

    private static long bytes(Path path) throws IOException {
        Path there = path.toAbsolutePath();
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        return there == null ? 0 : Files.getFileStore(there).getUsableSpace();
    }

    /** The failure of a write in {@code folder}, as a {@link DiskFullException} if that is what it is. */
    static IOException explained(Path folder, IOException failure) {
        return isFull(folder, failure) ? new DiskFullException(WORDS.say("disk.full", folder), failure) : failure;
    }

    private static boolean isFull(Path folder, IOException failure) {
        String said = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
        try {
            return FULL.stream().anyMatch(said::contains) || bytes(folder) < NOTHING;
        } catch (IOException e) {
            return false;
        }
    }
}
