package evenfall.report.block;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The drop height up to which form was held: what was, never a permission.
 *
 * @param heightM the height, m, or null
 * @param low lower end of its interval, or null
 * @param high upper end, or null
 * @param n landings with a height and a form
 * @param method how it was found, or null
 * @param why why the height is null, or null
 */
public record FormHeight(
        @Nullable Double heightM,
        @Nullable Double low,
        @Nullable Double high,
        int n,
        @Nullable String method,
        @Nullable String why) {

    /** The form height of these landings, which all count. */
    public static FormHeight of(List<BlockLanding> counted) {
        return FormHeightFinder.find(counted);
    }
}
