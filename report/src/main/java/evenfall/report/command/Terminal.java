package evenfall.report.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Tells whether a person watches standard error. */
final class Terminal {

    private static final Path ERROR_STREAM = Path.of("/proc/self/fd/2");

    private Terminal() {}

    /**
     * Whether standard error is known to be a terminal, told by the name under which the system lists the open file.
     * Where it lists none, the Java platform has no way to ask, and the answer is no.
     */
    static boolean errorIsTerminal() {
        try {
            if (Files.isSymbolicLink(ERROR_STREAM)) {
                String target = Files.readSymbolicLink(ERROR_STREAM).toString();
                return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || "/dev/console".equals(target);
            }
        } catch (IOException e) {
            return false;
        }
        return false;
    }
}
