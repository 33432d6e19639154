package evenfall.report.block;

import evenfall.report.log.SessionDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One session of a block. Landings left out are counted nowhere.
 *
 * @param date its date
 * @param landings landings that count
 * @param left of them, on the left foot
 * @param right of them, on the right foot
 * @param both of them, on both feet; where no foot is noted a landing is in none of the three
 * @param suggested of all, those whose foot only the sensors tell
 * @param straps sensors that sat elsewhere than in most sessions of the block
 * @param effortMinutes effort times minutes of the day, or null where the diary has none
 */
public record BlockSession(
        SessionDate date,
        int landings,
        int left,
        int right,
        int both,
        int suggested,
        List<StrapPlace> straps,
        @Nullable Double effortMinutes) {

    public BlockSession {
        straps = List.copyOf(straps);
    }
}
