package evenfall.report.command;

import evenfall.ingest.words.Words;
import java.util.Locale;
import picocli.CommandLine.ParameterException;

/** Failures as one sentence for a person: what, where, and what to do. */
final class Sentences {

    private static final Words WORDS = Words.beside(Sentences.class);

    private Sentences() {}

    static String ofUsage(ParameterException e) {
        String command = e.getCommandLine().getCommandSpec().qualifiedName();
        String what = String.valueOf(e.getMessage()).strip();
        String plain = what.endsWith(".") ? what.substring(0, what.length() - 1) : what;
        plain = plain.replaceFirst("is not a double$", WORDS.say("usage.number"))
                .replaceFirst("is not an (?:int|long)$", WORDS.say("usage.whole"));
        return WORDS.say("usage", command, lowerFirst(plain));
    }

    static String ofFault(Throwable e) {
        return WORDS.say("fault", e.getClass().getSimpleName(), String.valueOf(e.getMessage()));
    }

    private static String lowerFirst(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
