package evenfall.ingest.serial;

import evenfall.ingest.words.Words;
import java.util.List;
import java.util.stream.Collectors;

/** Why a port could not be opened, as one sentence for a person. */
final class Refusal {

    private static final Words WORDS = Words.beside(Refusal.class);

    /** What systems answer; source: errno of Linux and macOS. */
    private static final int NO_ACCESS = 13;

    private static final int NO_TERMINAL = 25;
    private static final int IS_FOLDER = 21;
    private static final int FAULT = 5;

    private Refusal() {}

    static String missing(String path, List<PortIdentity> present) {
        return WORDS.say(
                "none",
                path,
                present.isEmpty()
                        ? WORDS.say("none.there")
                        : WORDS.say(
                                "none.others",
                                present.stream().map(PortIdentity::path).collect(Collectors.joining(", "))));
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
            return WORDS.say("forbidden", path);
        }
        if (!windows && (error == NO_TERMINAL || error == IS_FOLDER)) {
            return WORDS.say("no.port", path);
        }
        if (!windows && error == FAULT) {
            return WORDS.say("nothing.behind", path);
        }
        return WORDS.say("in.use", path);
    }
}
