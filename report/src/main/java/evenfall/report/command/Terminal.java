package evenfall.report.command;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/** Tells whether a person watches standard error, and may be listened to. */
final class Terminal {

    private static final Path ERROR_STREAM = Path.of("/proc/self/fd/2");
    private static final Path INPUT_STREAM = Path.of("/proc/self/fd/0");
    private static final Path LISTED = Path.of("/dev/fd");
    private static final Path STATE = Path.of("/proc/self/stat");

    private Terminal() {}

    /**
     * Whether standard error is known to be a terminal, told by the name under which the system lists the open file.
     * Where it lists none, the Java platform has no way to ask, and the answer is no.
     */
    static boolean errorIsTerminal() {
        return isTerminal(ERROR_STREAM);
    }

    /**
     * Whether standard input is a terminal or a pipe, so that somebody may type. To be asked at the start: where it was closed,
     * its number goes to the next file or port the program opens, and nobody may read that.
     */
    static boolean somebodyMayType() {
        try {
            if (Files.isSymbolicLink(INPUT_STREAM)) {
                String target = Files.readSymbolicLink(INPUT_STREAM).toString();
                return isTerminal(INPUT_STREAM) || target.startsWith("pipe:") || target.startsWith("socket:");
            }
            return Files.isDirectory(LISTED)
                    ? Files.readAttributes(LISTED.resolve("0"), BasicFileAttributes.class)
                            .isOther()
                    : File.separatorChar == '\\';
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Whether standard input may be read: a program in the background that reads its terminal is stopped by the system.
     * Where the system does not tell who has the keyboard, the answer is yes.
     */
    static boolean inputMayBeRead() {
        if (!isTerminal(INPUT_STREAM)) {
            return true;
        }
        try {
            // After the program's name in brackets: state, parent, process group, session, terminal, its foreground
            // group.
            String state = Files.readString(STATE);
            String[] fields =
                    state.substring(state.lastIndexOf(')') + 1).strip().split(" ", 7);
            return fields.length < 7 || fields[2].equals(fields[5]);
        } catch (IOException e) {
            return true;
        }
    }

    private static boolean isTerminal(Path stream) {
        try {
            if (Files.isSymbolicLink(stream)) {
                String target = Files.readSymbolicLink(stream).toString();
                return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || "/dev/console".equals(target);
            }
        } catch (IOException e) {
            return false;
        }
        return false;
    }
}
