package evenfall.fusion.alignment;

import org.jspecify.annotations.Nullable;

/**
 * How the upper back's clock runs against the pelvis's, both counted from their own first sample:
 * {@code t_upper_back = t_pelvis + offsetS + driftPpm * 1e-6 * t_pelvis}.
 *
 * @param offsetS offset at the pelvis's first sample, s
 * @param driftPpm how much faster the upper back's clock runs, parts per million
 * @param sigmaMs one standard deviation of the map's error over the recording, ms
 * @param method how it was found, in words
 * @param rivalS another offset at which the motion fits nearly as well, s, or null where this one stands alone
 */
public record ClockMap(
        double offsetS,
        double driftPpm,
        double sigmaMs,
        String method,
        @Nullable Double rivalS) {

    /** A map that stands alone. */
    public ClockMap(double offsetS, double driftPpm, double sigmaMs, String method) {
        this(offsetS, driftPpm, sigmaMs, method, null);
    }

    ClockMap withRival(OffsetGuess guess) {
        Integer rival = guess.rival();
        return rival == null ? this : new ClockMap(offsetS, driftPpm, sigmaMs, method, rival * ForceColumn.STEP_S);
    }

    /** The upper back's clock at a moment of the pelvis's clock, s. */
    public double toUpperBack(double pelvisS) {
        return pelvisS + offsetS + driftPpm * 1e-6 * pelvisS;
    }

    /** The pelvis's clock at a moment of the upper back's clock, s. */
    public double toPelvis(double upperBackS) {
        return (upperBackS - offsetS) / (1 + driftPpm * 1e-6);
    }
}
