package evenfall.report.command;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program {@code evenfall}: picks the command and turns failures into one sentence and an exit status. */
@Command(name = "evenfall", description = "An honest account of how a person lands.")
public final class Main implements Runnable {

    @Override
    public void run() {
        CommandLine.usage(this, System.err);
    }

    /** Runs a command and exits with its status. */
    public static void main(String[] args) {
        System.exit(new CommandLine(new Main()).execute(args));
    }
}
