package evenfall.report.command;

import java.util.Locale;
import picocli.CommandLine.ParameterException;

/** Failures as one sentence for a person: what, where, and what to do. */
final class Sentences {

    private Sentences() {}

    static String ofUsage(ParameterException e) {
        String command = e.getCommandLine().getCommandSpec().qualifiedName();
        String what = String.valueOf(e.getMessage()).strip();
        String plain = what.endsWith(".") ? what.substring(0, what.length() - 1) : what;
        plain = plain.replaceFirst("is not a double$", "is not a number")
                .replaceFirst("is not an (?:int|long)$", "is not a whole number");
        return command + ": " + lowerFirst(plain) + "; '" + command + " --help' tells what it takes.";
    }

    static String ofFault(Throwable e) {
        return "The program itself failed (" + e.getClass().getSimpleName() + ": " + e.getMessage()
                + "); keep the files and report this sentence together with the command.";
    }

    private static String lowerFirst(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
