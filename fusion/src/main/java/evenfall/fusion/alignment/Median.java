package evenfall.fusion.alignment;

import java.util.Arrays;

/** The middle of some values. */
public final class Median {

    private Median() {}

    /**
     * The middle value, or the mean of the two middle ones.
     *
     * @param values at least one, in any order; left as they are
     */
    public static double of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }
}
