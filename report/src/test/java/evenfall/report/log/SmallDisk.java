package evenfall.report.log;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A real disk of a few megabytes in memory, where one may be mounted; else the test that asks for it is skipped. */
public final class SmallDisk implements AutoCloseable {

    private final Path folder;

    /** A disk that is {@code folder}, which is made. */
    public SmallDisk(Path folder, String size) throws IOException, InterruptedException {
        this.folder = Files.createDirectory(folder);
        assumeTrue(
                run("mount", "-t", "tmpfs", "-o", "size=" + size, "none", folder.toString()),
                "a small disk of memory may not be mounted by this user on this system");
    }

    /** Fills it until only so many bytes are left. */
    public void fill(long left) throws IOException {
        byte[] piece = new byte[1 << 16];
        try (OutputStream file = Files.newOutputStream(folder.resolve("full"))) {
            for (long room = room(); room > left; room = room()) {
                file.write(piece, 0, (int) Math.min(piece.length, room - left));
            }
        }
    }

    private long room() throws IOException {
        return Files.getFileStore(folder).getUsableSpace();
    }

    @Override
    public void close() {
        try {
            run("umount", folder.toString());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static boolean run(String... command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
