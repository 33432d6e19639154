package evenfall.report.statistics;

import java.util.Arrays;
import java.util.Comparator;

/**
 * How sure each of many findings is once one knows that many were looked at (Benjamini and Hochberg 1995, JRSS B 57:289):
 * of those called at an adjusted value of q or less, no more than the share q is expected to be chance.
 */
public final class FalseDiscovery {

    private FalseDiscovery() {}

    /** The adjusted value of each p value, in the same order. */
    public static double[] adjusted(double[] p) {
        Integer[] order = new Integer[p.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble((Integer i) -> p[i]).reversed());
        double[] adjusted = new double[p.length];
        double least = 1;
        for (int rank = p.length; rank >= 1; rank--) {
            int i = order[p.length - rank];
            least = Math.min(least, p[i] * p.length / rank);
            adjusted[i] = least;
        }
        return adjusted;
    }
}
