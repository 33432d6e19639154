package evenfall.report.command;

import evenfall.ingest.recorder.DiskFullException;
import evenfall.ingest.serial.PortGoneException;
import evenfall.report.log.LogBusyException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
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

    static String ofFiles(IOException e) {
        if (e instanceof LogBusyException || e instanceof DiskFullException || e instanceof PortGoneException) {
            return String.valueOf(e.getMessage());
        }
        if (e instanceof NoSuchFileException missing) {
            return "There is no file or folder " + missing.getFile() + "; check the path.";
        }
        if (e instanceof AccessDeniedException denied) {
            return "Access to " + denied.getFile() + " is denied; change its permissions or choose another place.";
        }
        if (e instanceof FileSystemException file && file.getFile() != null) {
            return "The file " + file.getFile() + " could not be read or written (" + reason(file)
                    + "); check the disk and choose another place if need be.";
        }
        return "Reading or writing failed (" + e.getMessage() + "); check the disk and try again.";
    }

    static String ofFault(Throwable e) {
        return "The program itself failed (" + e.getClass().getSimpleName() + ": " + e.getMessage()
                + "); keep the files and report this sentence together with the command.";
    }

    private static String reason(FileSystemException e) {
        return e.getReason() == null ? e.getClass().getSimpleName() : e.getReason();
    }

    private static String lowerFirst(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
