package evenfall.report.round;

import java.util.List;

/**
 * Somebody on today's list.
 *
 * @param id the athlete's name in the log
 * @param name what people call the athlete
 * @param standing how it stands today
 * @param heeded what stands first: a clinician's limit, open pain and signs, a sentence each
 * @param consent whether consent is noted
 */
public record Person(String id, String name, Standing standing, List<String> heeded, boolean consent) {

    public Person {
        heeded = List.copyOf(heeded);
    }

    /** How somebody stands today. */
    public enum Standing {
        /** Has not had a turn. */
        TO_COME,
        /** Has had one. */
        HAD_TURN,
        /** Pain or a warning sign: no drops today. */
        STOPPED
    }
}
