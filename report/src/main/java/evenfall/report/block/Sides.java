package evenfall.report.block;

import org.jspecify.annotations.Nullable;

/**
 * Landings on one foot, by side; measures that have a side are turned so that + is towards the landing foot.
 *
 * @param left landings on the left foot
 * @param right landings on the right foot
 * @param verdict {@code too few}, or null where not judged
 * @param why why the difference is null
 */
public record Sides(OneSide left, OneSide right, @Nullable String verdict, String why) {

    /**
     * Landings on one side.
     *
     * @param n how many have a value
     * @param median their median, or null without any
     */
    public record OneSide(int n, @Nullable Double median) {}
}
