package evenfall.report.block;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One measure over a block.
 *
 * @param unit its unit, empty for a count
 * @param sessions its median in each session that has a value
 * @param typicalError standard deviation of the differences of successive session medians over √2, or null
 * @param mdc95 smallest change that is more than the typical error explains, 95 %, or null
 * @param trend how it moves over the weeks
 * @param sides left against right
 * @param bothFeet two-footed landings of a measure that has a side, or null for other measures
 * @param tiring what drifts within sessions
 * @param chances how often chance alone would give as much
 * @param evidence what all this was taken from
 */
public record MeasureCourse(
        String unit,
        List<SessionMedian> sessions,
        @Nullable Double typicalError,
        @Nullable Double mdc95,
        Trend trend,
        Sides sides,
        @Nullable BothFeet bothFeet,
        Tiring tiring,
        Chances chances,
        Evidence evidence) {

    public MeasureCourse {
        sessions = List.copyOf(sessions);
    }
}
