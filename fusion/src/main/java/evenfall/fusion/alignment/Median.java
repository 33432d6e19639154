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
        return sorting(values.clone());
    }

    /**
     * The same of values that nobody needs in their order any more, without a copy.
     *
     * @param values at least one, in any order; sorted by this
     */
    public static double sorting(double[] values) {
        Arrays.sort(values);
        int n = values.length;
        return n % 2 == 1 ? values[n / 2] : (values[n / 2 - 1] + values[n / 2]) / 2;
    }
}
