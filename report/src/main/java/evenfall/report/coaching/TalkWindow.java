package evenfall.report.coaching;

import org.jspecify.annotations.Nullable;

/**
 * When an athlete may be spoken to: from a landing that has settled until {@value #LONGEST_S} s later, and no longer than until
 * the person has moved and stands still anew, which may be on the box. Times are those of the sensors, s.
 */
final class TalkWindow {

    /** Nobody is back on a box so soon after a landing, s: common practice, no source. */
    static final double LONGEST_S = 4;

    private double untilS = Double.NEGATIVE_INFINITY;
    private boolean moved;

    /**
     * A landing was told.
     *
     * @param settledS when it settled, or null if it did not
     * @param goesOn whether the next jump, step or landing has begun already
     */
    void landed(double contactS, @Nullable Double settledS, boolean goesOn) {
        untilS = goesOn ? Double.NEGATIVE_INFINITY : (settledS == null ? contactS : settledS) + LONGEST_S;
        moved = false;
    }

    /** How the person stands now: for how long still, s, or 0 while moving. */
    void stands(double standingS) {
        if (standingS <= 0) {
            moved = true;
        } else if (moved) {
            untilS = Double.NEGATIVE_INFINITY;
        }
    }

    boolean isOpen(double nowS) {
        return nowS <= untilS;
    }
}
