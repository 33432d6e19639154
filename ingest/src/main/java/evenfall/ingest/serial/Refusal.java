package evenfall.ingest.serial;

import java.util.List;
import java.util.stream.Collectors;

/** Why a port could not be opened, as one sentence for a person. */
final class Refusal {

    /** What systems answer; source: errno of Linux and macOS. */
    private static final int NO_ACCESS = 13;

    private static final int NO_TERMINAL = 25;
    private static final int IS_FOLDER = 21;
    private static final int FAULT = 5;

    private Refusal() {}

    static String missing(String path, List<PortIdentity> present) {
        return "There is no port " + path + "; plug the receiver in"
                + (present.isEmpty()
                        ? " (no port is there now) and give the path the system shows for it."
                        : " or choose one that is there: "
                                + present.stream().map(PortIdentity::path).collect(Collectors.joining(", ")) + ".");
    }

    /**
     * Of a port that is there.
     *
     * @param allowed whether this user may read and write it
     * @param windows whether this is a system whose numbers of errors are its own
     * @param error what the system answered
     */
    static String of(String path, boolean allowed, boolean windows, int error) {
        if (!allowed || (!windows && error == NO_ACCESS)) {
            return "The port " + path
                    + " may not be opened by this user; ask for access to serial ports (often the group"
                    + " dialout) and log in again.";
        }
        if (!windows && (error == NO_TERMINAL || error == IS_FOLDER)) {
            return path + " is no serial port; give the path of the receiver.";
        }
        if (!windows && error == FAULT) {
            return "The port " + path + " has nothing behind it; give the path of the receiver.";
        }
        return "The port " + path + " is in use, most likely by another program; close that program and try again.";
    }
}
