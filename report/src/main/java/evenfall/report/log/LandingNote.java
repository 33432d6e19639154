package evenfall.report.log;

import evenfall.fusion.landing.Side;
import org.jspecify.annotations.Nullable;

/**
 * What the coach knows of one landing; null where nothing was noted.
 *
 * @param side the foot or feet landed on
 * @param heightM drop height, m
 * @param surface what was landed on
 * @param shoes what was worn
 * @param leaveOut why the landing counts nowhere, or null if it counts
 * @param remark anything else
 */
public record LandingNote(
        @Nullable Side side,
        @Nullable Double heightM,
        @Nullable String surface,
        @Nullable String shoes,
        @Nullable String leaveOut,
        @Nullable String remark) {

    public static final LandingNote NONE = new LandingNote(null, null, null, null, null, null);
}
