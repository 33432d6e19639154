package evenfall.report.round;

import org.jspecify.annotations.Nullable;

/**
 * Somebody on today's list.
 *
 * @param id the athlete's name in the log
 * @param name what people call the athlete
 * @param standing how it stands today
 * @param clinicianLimit what a licensed practitioner forbids, or null
 * @param consent whether consent is noted
 */
public record Person(
        String id, String name, Standing standing, @Nullable String clinicianLimit, boolean consent) {

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
