package evenfall.report.deciding;

import evenfall.report.weeks.HeightCount;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Up to which height form was held. */
public final class WorkingHeight {

    private WorkingHeight() {}

    /**
     * The highest height at which form was held in that share of the landings, and at every lower one too; null if there is
     * none.
     *
     * @param heights the highest first
     * @param share of 1
     */
    public static @Nullable HeightCount of(List<HeightCount> heights, double share) {
        HeightCount highest = null;
        for (int i = heights.size() - 1; i >= 0; i--) {
            HeightCount at = heights.get(i);
            if (at.held() < share * at.all()) {
                break;
            }
            highest = at;
        }
        return highest;
    }
}
