package evenfall.report.command;

import evenfall.ingest.serial.PortIdentity;
import evenfall.ingest.words.Words;
import java.util.List;
import java.util.stream.Collectors;

/** Which ports there are to choose from, in a sentence. */
final class PortChoice {

    private static final Words WORDS = Words.beside(PortChoice.class);

    private PortChoice() {}

    static String sentence(List<PortIdentity> free) {
        return free.isEmpty()
                ? WORDS.say("port.none")
                : WORDS.say("port.free", free.stream().map(PortChoice::named).collect(Collectors.joining(", ")));
    }

    private static String named(PortIdentity port) {
        return port.description().isEmpty() ? port.path() : port.path() + " (" + port.description() + ")";
    }
}
