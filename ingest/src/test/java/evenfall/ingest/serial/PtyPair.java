package evenfall.ingest.serial;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** Two pseudo-terminals tied together by the tool socat; skips the test where that is not installed. */
final class PtyPair implements AutoCloseable {

    final String left;
    final String right;
    private final Process process;

    PtyPair(Path folder) throws IOException, InterruptedException {
        assumeTrue(
                Files.isExecutable(Path.of("/usr/bin/socat")) || Files.isExecutable(Path.of("/usr/local/bin/socat")),
                "socat, which ties two pseudo-terminals together, is not installed");
        Path a = folder.resolve("a");
        Path b = folder.resolve("b");
        left = a.toString();
        right = b.toString();
        process = new ProcessBuilder("socat", "pty,raw,echo=0,link=" + left, "pty,raw,echo=0,link=" + right)
                .redirectErrorStream(true)
                .start();
        for (int i = 0; i < 500 && !(Files.exists(a) && Files.exists(b)); i++) {
            Thread.sleep(10);
        }
        assumeTrue(Files.exists(a) && Files.exists(b), "socat made no pseudo-terminals here");
    }

    /** As near to pulling the cable as a pseudo-terminal comes. */
    void unplug() throws InterruptedException {
        process.destroyForcibly().waitFor(5, TimeUnit.SECONDS);
    }

    /** Waits for its end: the tool may be taking its links away just then, which the temporary folder's end must not meet. */
    @Override
    public void close() {
        process.destroyForcibly().onExit().join();
    }
}
