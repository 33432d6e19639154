package evenfall.report.statistics;

/**
 * A 95 % interval.
 *
 * @param low its lower end
 * @param high its upper end, not below the lower
 */
public record Interval(double low, double high) {

    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval cannot run from " + low + " to " + high);
        }
    }

    /** From so much below a value to as much above it. */
    public static Interval about(double middle, double reach) {
        return new Interval(middle - reach, middle + reach);
    }

    /** Whether zero lies outside. */
    public boolean clearOfZero() {
        return low > 0 || high < 0;
    }
}
