package evenfall.report.command;

import evenfall.ingest.progress.Progress;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Runs a command on the standard streams. Kept apart from {@link Main}, for Java opens libraries to check what a class does before
 * its first line, and a first machine that hands its work on needs none.
 */
final class StandardStreams {

    private StandardStreams() {}

    /** Runs a command and says its exit status. */
    static int run(String[] args) {
        StandardOutput output = new StandardOutput();
        PrintStream out = new PrintStream(output, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        Progress progress = Terminal.errorIsTerminal() ? new ProgressBar(err) : Progress.NONE;
        InputStream in = Terminal.somebodyMayType() ? System.in : InputStream.nullInputStream();
        StandardLines lines = new StandardLines(in, Terminal::inputMayBeRead);
        return new CommandRunner(new Console(lines, out, err, progress, output::failure)).run(args);
    }
}
