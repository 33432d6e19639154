package evenfall.report.block;

import evenfall.report.statistics.Medians;
import java.util.List;
import java.util.function.Predicate;

/**
 * Values of which only the least is known, since a sensor stood at full scale. A median goes by rank: it is the same however
 * much larger such values are, as long as fewer than half are cut off below it.
 */
final class CutOff {

    /** With a larger share cut off, what is found by more than ranks is not told. */
    static final double MOST = 0.1;

    private CutOff() {}

    /** The values, with those that may be larger as large as can be. */
    static double[] raised(List<BlockLanding> landings, double[] values, Predicate<BlockLanding> cutOff) {
        double[] raised = values.clone();
        for (int i = 0; i < raised.length; i++) {
            if (cutOff.test(landings.get(i))) {
                raised[i] = Double.POSITIVE_INFINITY;
            }
        }
        return raised;
    }

    /** The share of landings whose value may be larger. */
    static double share(List<BlockLanding> landings, Predicate<BlockLanding> cutOff) {
        return landings.isEmpty()
                ? 0
                : (double) landings.stream().filter(cutOff).count() / landings.size();
    }

    /** Whether the median of these raised values is not known. */
    static boolean hides(double[] raised) {
        return raised.length > 0 && Double.isInfinite(Medians.of(raised));
    }
}
