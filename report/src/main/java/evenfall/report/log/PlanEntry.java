package evenfall.report.log;

import evenfall.fusion.landing.Side;
import org.jspecify.annotations.Nullable;

/**
 * What the coach said of the landings to come while a session was recorded; it holds until the next entry.
 *
 * @param writtenAt when it was said, ISO 8601 with offset
 * @param fromS from this moment of the recording on, s on the pelvis's clock
 * @param side the foot or feet to land on, or null where nothing was said
 * @param heightM drop height, m, or null
 * @param surface what is landed on, or null
 */
public record PlanEntry(
        String writtenAt,
        double fromS,
        @Nullable Side side,
        @Nullable Double heightM,
        @Nullable String surface) {

    /** As a note on one landing. */
    LandingNote note() {
        return new LandingNote(side, heightM, surface, null, null, null);
    }
}
