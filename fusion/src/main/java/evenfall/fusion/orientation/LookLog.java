package evenfall.fusion.orientation;

/** Is told what a filter does, so that it can be gone through backward. A live filter has none to tell. */
interface LookLog {

    /** Keeps nothing. */
    LookLog NONE = new LookLog() {};

    /** A block of these sums begins to be looked at. */
    default void begin(BlockSums block) {}

    /**
     * One look.
     *
     * @param part which part
     * @param surprise the difference to what was expected, over its variance
     * @param row the part's row of the covariance before
     * @param scale one over the variance of the difference
     */
    default void look(int part, double surprise, double[] row, double scale) {}

    /** The block's looks are done and its correction is about to be taken over. */
    default void end(ErrorState errors) {}

    /**
     * A start is over.
     *
     * @param errors as they are after it
     * @param block sums over the start
     * @param tilt the turn that the mean force of the start laid on what the turn rate alone told
     */
    default void started(ErrorState errors, BlockSums block, Attitude tilt) {}
}
