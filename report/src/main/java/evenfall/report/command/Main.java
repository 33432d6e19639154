package evenfall.report.command;

import evenfall.ingest.progress.Progress;
import java.io.InputStream;
import java.io.PrintStream;
import java.util.OptionalInt;

/** The program {@code evenfall}: runs a command and exits with its status. */
public final class Main {

    private Main() {}

    /** Runs a command on the standard streams and exits with its status. */
    public static void main(String[] args) {
        long size = SecondMachine.sizeOf(args);
        OptionalInt done = SecondMachine.handOn(args, size);
        if (done.isPresent()) {
            System.exit(done.getAsInt());
        }
        if (size > 0) {
            new HeadStart().start();
        }
        System.exit(StandardStreams.run(args));
    }

    /**
     * Runs a command on given streams, drawing no progress; nobody types anything.
     *
     * @return the exit status: 0 done, 1 failed while running, 2 wrong usage, 3 the input can't be used
     */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        return run(args, InputStream.nullInputStream(), out, err);
    }

    /** The same with somebody who types lines, which are read as they come and never waited for. */
    public static int run(String[] args, InputStream in, PrintStream out, PrintStream err) {
        StandardLines lines = new StandardLines(in, () -> true);
        return new CommandRunner(new Console(lines, out, err, Progress.NONE, () -> null)).run(args);
    }
}
