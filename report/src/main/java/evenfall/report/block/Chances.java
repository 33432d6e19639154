package evenfall.report.block;

/**
 * How often chance alone would give as much, after allowing for how many measures of the block were looked at (Benjamini
 * and Hochberg 1995): a page calls a change only what stands this.
 *
 * @param trend of the trend, 0 to 1
 * @param sides of the difference between the feet
 * @param bothFeet of the bias of two-footed landings
 * @param tiring of what drifts within sessions
 */
public record Chances(double trend, double sides, double bothFeet, double tiring) {

    /** Of all that a page calls a change, at most this share is expected to be chance. */
    public static final double ALLOWED = 0.05;

    /** Whether a verdict with this chance may be called a change. */
    public static boolean stands(double chance) {
        return chance <= ALLOWED;
    }
}
