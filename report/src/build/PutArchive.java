import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes an archive of the classes that a run of the program needed, and puts it in its place tried once and whole: a Java
 * machine that is given half of one crashes.
 *
 * <p>java PutArchive.java CLASSES PLACE JAVA JAR, with CLASSES as {@code -XX:DumpLoadedClassList} writes them; the program in
 * JAR answers {@code --version}. The archive serves the machine JAVA and the program where it lies.
 */
final class PutArchive {

    private PutArchive() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path near = Path.of(args[1] + ".new");
        List<String> archive = List.of("-XX:SharedArchiveFile=" + near, "-XX:+UseSerialGC", "-Xlog:disable");
        List<String> program = List.of("-jar", args[3]);
        if (answers(args[2], archive, List.of("-Xshare:dump", "-XX:SharedClassListFile=" + args[0]), program)
                && answers(args[2], archive, List.of("-Xshare:on", "-XX:+SuppressFatalErrorMessage"), program, List.of("--version"))) {
            Files.move(near, Path.of(args[1]), StandardCopyOption.REPLACE_EXISTING);
        } else {
            System.err.println("No archive of classes was made: the program starts without, somewhat later.");
            Files.deleteIfExists(near);
            // One of an earlier program would be worse than none.
            Files.deleteIfExists(Path.of(args[1]));
        }
    }

    @SafeVarargs
    private static boolean answers(String java, List<String>... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java));
        for (List<String> some : words) {
            command.addAll(some);
        }
        return new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor() == 0;
    }
}
