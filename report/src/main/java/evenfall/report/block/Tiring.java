package evenfall.report.block;

import evenfall.report.statistics.Interval;
import org.jspecify.annotations.Nullable;

/**
 * What drifts with the number of the landing within a session, at equal height and foot.
 *
 * @param perLanding change from one landing to the next, or null
 * @param interval its 95 % interval, sessions taken for what is drawn, or null
 * @param overSession the change over a session of the usual length, or null
 * @param landings how many landings that is, counted from the first to the last, or null
 * @param verdict {@code rising}, {@code falling}, {@code no clear change} or {@code too few}
 * @param why why something is null, or null
 */
public record Tiring(
        @Nullable Double perLanding,
        @Nullable Interval interval,
        @Nullable Double overSession,
        @Nullable Integer landings,
        String verdict,
        @Nullable String why) {

    static Tiring untold(String verdict, String why) {
        return new Tiring(null, null, null, null, verdict, why);
    }
}
