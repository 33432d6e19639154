package evenfall.report.block;

import org.jspecify.annotations.Nullable;

/**
 * Two-footed landings of a measure that has a side, with the signs results have.
 *
 * @param n how many have a value
 * @param median their median, or null without any
 * @param verdict {@code too few}, or null where not judged
 * @param why why the interval is null
 */
public record BothFeet(
        int n, @Nullable Double median, @Nullable String verdict, String why) {}
