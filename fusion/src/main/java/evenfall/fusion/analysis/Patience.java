package evenfall.fusion.analysis;

import evenfall.fusion.alignment.Stance;
import org.jspecify.annotations.Nullable;

/**
 * When a landing is told: once it has settled and the stance after it has begun, which says what its speed was; not
 * settled, some seconds after contact or when the next event comes.
 *
 * @param nowS s on the pelvis's clock
 * @param contactS contact
 * @param nextS begin of the next event; infinite while none is seen
 */
record Patience(double nowS, double contactS, double nextS) {

    /** A landing that has not settled is given this long after contact, s. */
    static final double UNSETTLED_S = 3;

    /** One that has settled waits so long for the stance after it and for the upper back's samples, s, */
    static final double SETTLED_S = 0.7;
    /** no longer than until the stance is this long, s, */
    private static final double ENOUGH_STANCE_S = 0.9;
    /** and the upper back's samples reach this far beyond settling, s. */
    private static final double UPPER_BACK_BEYOND_S = 0.3;

    /**
     * Whether to tell it now.
     *
     * @param settledS when it settled, or null
     * @param after the stance after it as far as it is seen, or null
     * @param upperBackUntilS how far the upper back's samples reach, s on the pelvis's clock
     */
    boolean isOver(@Nullable Double settledS, @Nullable Stance after, double upperBackUntilS) {
        if (nextS < Double.POSITIVE_INFINITY || nowS >= contactS + UNSETTLED_S) {
            return true;
        }
        if (settledS == null) {
            return false;
        }
        boolean allSeen = after != null
                && after.lengthS() >= ENOUGH_STANCE_S
                && upperBackUntilS >= settledS + UPPER_BACK_BEYOND_S;
        return allSeen || nowS >= settledS + SETTLED_S;
    }
}
