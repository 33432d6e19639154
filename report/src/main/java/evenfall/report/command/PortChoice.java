package evenfall.report.command;

import evenfall.ingest.serial.PortIdentity;
import java.util.List;
import java.util.stream.Collectors;

/** Which ports there are to choose from, in a sentence. */
final class PortChoice {

    private PortChoice() {}

    static String sentence(List<PortIdentity> free) {
        return free.isEmpty()
                ? "Give the port of the receiver with --port: none that is free is found here, so plug it in; the path of"
                        + " any other port may be given too."
                : "Give the port of the receiver with --port; free now: "
                        + free.stream().map(PortChoice::named).collect(Collectors.joining(", "))
                        + "; the path of any other port may be given too.";
    }

    private static String named(PortIdentity port) {
        return port.description().isEmpty() ? port.path() : port.path() + " (" + port.description() + ")";
    }
}
