package evenfall.report.log;

import evenfall.fusion.landing.Side;
import java.util.Locale;
import java.util.Set;
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

    /** Words in {@code leave_out} that say the landing counts. */
    private static final Set<String> COUNTS = Set.of("", "false", "no", "0");

    /** Whether nothing was noted. */
    public boolean saysNothing() {
        return side == null
                && heightM == null
                && surface == null
                && shoes == null
                && leaveOut == null
                && remark == null;
    }

    /** Whether the landing counts nowhere: {@code leaveOut} is anything but empty, false, no or 0. */
    public boolean leftOut() {
        return leavesOut(leaveOut);
    }

    /** Whether a cell or option that says why a landing is left out does leave it out. */
    public static boolean leavesOut(@Nullable String leaveOut) {
        return leaveOut != null && !COUNTS.contains(leaveOut.strip().toLowerCase(Locale.ROOT));
    }

    /** This note with what a later one says laid over it; an empty text of the later one takes the earlier back. */
    public LandingNote with(LandingNote later) {
        return new LandingNote(
                later.side == null ? side : later.side,
                later.heightM == null ? heightM : later.heightM,
                over(surface, later.surface),
                over(shoes, later.shoes),
                over(leaveOut, later.leaveOut),
                over(remark, later.remark));
    }

    private static @Nullable String over(@Nullable String earlier, @Nullable String later) {
        String value = later == null ? earlier : later;
        return value == null || value.isBlank() ? null : value;
    }
}
