package evenfall.report.weeks;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One week of a block; weeks without a session are there too.
 *
 * @param monday its first day
 * @param sessions sessions in it
 * @param landings landings that count
 * @param effortMinutes effort times minutes, of what the diary has; null where it has none
 * @param landingsChange landings less those of the week before, null for the first
 * @param effortChange effort times minutes less that of the week before, null where either has none
 */
public record WeekCount(
        LocalDate monday,
        int sessions,
        int landings,
        @Nullable Double effortMinutes,
        @Nullable Integer landingsChange,
        @Nullable Double effortChange) {}
