package evenfall.fusion.alignment;

/**
 * How far a person strays from straight ahead against what is usual: who takes off this way and that, and whose trunk crouches
 * so, bends so too. Two bends that happen to be alike say little of how straight they are; all directions of a recording
 * together say much.
 *
 * @param squares sum of the squared distances of directions from their means, each in usual standard deviations
 * @param freedom how many of them are free: each mean takes one
 */
public record Straying(double squares, double freedom) {

    /** A person of whom nothing is known strays as usual. */
    public static final Straying USUAL = new Straying(0, 0);

    /** What is usual weighs as much as so many directions. */
    private static final double USUAL_WEIGHT = 4;
    /** Of two or three directions of one kind, what is usual weighs as much as so many. */
    private static final double USUAL_COUNT = 2;

    /** The same with more directions of one kind. */
    public Straying with(double squaresDeg, int count, double usualDeg) {
        return new Straying(squares + squaresDeg / (usualDeg * usualDeg), freedom + count - 1);
    }

    /** The same with what another sensor shows. */
    public Straying with(Straying other) {
        return new Straying(squares + other.squares, freedom + other.freedom);
    }

    /** By how much this person's standard deviations are those that are usual. */
    public double factor() {
        return Math.sqrt((USUAL_WEIGHT + squares) / (USUAL_WEIGHT + freedom));
    }

    /**
     * The variance of one of several directions: what they scatter, and what such directions usually do as if that had been
     * seen twice (the mean of an inverse gamma distribution, textbook matter). The larger of both would be too large on
     * average.
     *
     * @param squares sum of the squared distances from their mean
     * @param count how many
     * @param usual one standard deviation of such directions
     */
    static double variance(double squares, int count, double usual) {
        return (USUAL_COUNT * usual * usual + squares) / (USUAL_COUNT + count - 1);
    }
}
