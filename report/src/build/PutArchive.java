import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts an archive of classes in its place, tried once and whole: a Java machine that is given half of one crashes.
 *
 * <p>java PutArchive.java ARCHIVE PLACE PROGRAM [OPTION …], where the program answers {@code --version}
 */
final class PutArchive {

    private PutArchive() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path archive = Path.of(args[0]);
        if (!serves(archive, List.of(args).subList(2, args.length))) {
            System.err.println("No archive of classes was made: the program starts without, somewhat later.");
            Files.deleteIfExists(archive);
            return;
        }
        Path near = Path.of(args[1] + ".new");
        Files.move(archive, near, StandardCopyOption.REPLACE_EXISTING);
        Files.move(near, Path.of(args[1]), StandardCopyOption.REPLACE_EXISTING);
    }

    private static boolean serves(Path archive, List<String> program) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(program);
        command.add("--version");
        ProcessBuilder trial = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        trial.environment().put("_JAVA_OPTIONS", "-XX:+SuppressFatalErrorMessage -Xshare:on \"-XX:SharedArchiveFile=" + archive + "\"");
        return trial.start().waitFor() == 0;
    }
}
