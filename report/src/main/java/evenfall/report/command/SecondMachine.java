package evenfall.report.command;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Hands {@code landings} on to a second Java machine that compiles each method once and finds its classes in an archive. The
 * first compiles what is used often a second time, with more care, and that takes longer than the better code saves, even over
 * ten hours of recording; and it reads and checks each class anew (DEVELOPERS.md, "What starting and compiling cost"). Only the
 * command line of a Java machine can tell it so, and a jar has none: the start script and the image say it at once and are never
 * started twice.
 *
 * <p>Nothing here is written with lambdas or streams: to make the first of them takes Java longer than all the rest.
 *
 * <p>Streams, working folder and exit status are those of the second. A first that is ended ends it; if it is killed so that it
 * cannot, the second goes on and writes its result.
 */
final class SecondMachine {

    /**
     * Files smaller than this together, bytes, are done before a start without an archive has paid for itself: three minutes of
     * plain text. With one it pays always.
     */
    private static final long LEAST = 4 << 20;

    private static final String ARCHIVE = "-XX:SharedArchiveFile=";

    /** What may stand before the jar: such options hold for the second as well. All others are somebody's own plan. */
    private static final List<String> PLAIN = List.of("-Xmx", "-Xms", "-Xss", "-D");

    /** A setting that opens a port, which there is but once. */
    private static final String REMOTE = "-Dcom.sun.management";

    /** Where options for every Java machine may stand, which may not go together with these. */
    private static final List<String> ELSEWHERE = List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS", "_JAVA_OPTIONS");

    private SecondMachine() {}

    /**
     * Has {@code args} done and says its exit status; says nothing where this machine had better do it itself.
     *
     * @param size of the files whose landings they ask for, bytes; 0 where they ask for something else
     */
    static OptionalInt handOn(String[] args, long size) {
        if (size == 0 || compilesOnce() || isToldElsewhere()) {
            return OptionalInt.empty();
        }
        ProcessHandle.Info self = ProcessHandle.current().info();
        List<String> command =
                command(self.command().orElse(""), List.of(self.arguments().orElse(new String[0])), List.of(args));
        return pays(command, size) ? run(command) : OptionalInt.empty();
    }

    /** Of the files whose landings {@code args} ask for together, bytes; 0 where they ask for something else. */
    static long sizeOf(String[] args) {
        long size = 0;
        if (args.length > 0 && args[0].equals("landings")) {
            for (String arg : args) {
                File file = new File(arg.substring(arg.indexOf('=') + 1));
                size += file.isFile() ? file.length() : 0;
            }
        }
        return size;
    }

    /** Whether to start {@code command} for files of {@code size} bytes. */
    static boolean pays(List<String> command, long size) {
        return !command.isEmpty() && (size >= LEAST || hasArchive(command));
    }

    /** Whether this machine leaves the second compiler out; so it says of itself, and to ask for its options takes far longer. */
    private static boolean compilesOnce() {
        return System.getProperty("java.vm.info", "").contains("emulated-client");
    }

    private static boolean hasArchive(List<String> command) {
        for (String word : command) {
            if (word.startsWith(ARCHIVE)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isToldElsewhere() {
        for (String variable : ELSEWHERE) {
            if (System.getenv(variable) != null) {
                return true;
            }
        }
        return false;
    }

    /**
     * What to start.
     *
     * @param java this machine's program
     * @param given all it was given, as far as the system tells
     * @param args of them, what comes behind the jar
     * @return nothing where it was told more than a jar and plain options, or where the system does not tell
     */
    static List<String> command(String java, List<String> given, List<String> args) {
        int jar = given.size() - args.size() - 1;
        if (java.isEmpty()
                || jar < 1
                || !given.get(jar - 1).equals("-jar")
                || !given.subList(jar + 1, given.size()).equals(args)) {
            return List.of();
        }
        List<String> options = given.subList(0, jar - 1);
        for (String option : options) {
            if (!isPlain(option)) {
                return List.of();
            }
        }
        List<String> command = new ArrayList<>(List.of(java));
        command.addAll(options);
        // As in src/start/evenfall.
        command.add("-XX:TieredStopAtLevel=1");
        command.add("-XX:Tier3BackEdgeThreshold=5000");
        command.add("-XX:+UseSerialGC");
        Path archive = Path.of(given.get(jar)).resolveSibling("lib/evenfall.jsa");
        if (Files.isRegularFile(archive)) {
            command.add(ARCHIVE + archive);
            command.add("-Xshare:auto");
        }
        command.add("-Xlog:disable");
        command.add("-Xlog:all=error,cds=off:stderr");
        command.addAll(given.subList(jar - 1, given.size()));
        return command;
    }

    private static boolean isPlain(String option) {
        for (String plain : PLAIN) {
            if (option.startsWith(plain)) {
                return !option.startsWith(REMOTE);
            }
        }
        return false;
    }

    /** Runs it to its end; says nothing if it could not be started. */
    static OptionalInt run(List<String> command) {
        Process process;
        try {
            process = new ProcessBuilder(command).inheritIO().start();
        } catch (IOException e) {
            // No room for a second, or none allowed.
            return OptionalInt.empty();
        }
        Runtime.getRuntime().addShutdownHook(new Thread() {
            @Override
            public void run() {
                process.destroy();
            }
        });
        try {
            return OptionalInt.of(process.waitFor());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return OptionalInt.of(CommandRunner.FAILED);
        }
    }
}
