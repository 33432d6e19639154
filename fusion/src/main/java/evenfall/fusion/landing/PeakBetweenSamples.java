package evenfall.fusion.landing;

/**
 * How far a peak may rise above the largest sample. A parabola through three samples tops out by at most an eighth of their bend
 * above the middle one, and by 1 / √5 of that root mean square over all places that samples may have on it.
 */
final class PeakBetweenSamples {

    private static final double OF_BEND = 1 / (8 * Math.sqrt(5));

    /** Straps ring faster than three samples tell: so much more. On simulated landings at 100 to 400 Hz. */
    private static final double RINGING = 1.3;

    private PeakBetweenSamples() {}

    /** One standard deviation of it, in the unit of the samples; the middle one is the largest. */
    static double sigma(double before, double largest, double after) {
        return RINGING * OF_BEND * (2 * largest - before - after);
    }
}
