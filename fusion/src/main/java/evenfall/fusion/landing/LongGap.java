package evenfall.fusion.landing;

import evenfall.ingest.recording.Gap;

/**
 * Whether so many samples are missing that what happened meanwhile can only be guessed: a tenth of a second and more holds a whole
 * impact, or the farthest angle. Shorter gaps are bridged, and sigma says what that costs.
 */
final class LongGap {

    /** Gaps of 0.15 s cut out of simulated landings left depth and tilt off by 4 stated sigmas; of 0.07 s by none, s. */
    private static final double LEAST_S = 0.12;

    private LongGap() {}

    /** Whether a long gap of a segment's sensor reaches into a stretch of the pelvis's clock, s. */
    static boolean within(SegmentMotion segment, double fromS, double toS) {
        return length(segment, fromS, toS) > 0;
    }

    /**
     * Length of the longest such gap, s; 0 without any.
     *
     * @throws IllegalArgumentException if the stretch ends before it begins
     */
    static double length(SegmentMotion segment, double fromS, double toS) {
        if (fromS > toS) {
            throw new IllegalArgumentException("from " + fromS + " s to " + toS + " s before it");
        }
        double from = segment.ownTime(fromS);
        double to = segment.ownTime(toS);
        double longest = 0;
        for (Gap gap : segment.motion().stream().gaps()) {
            if (gap.lengthS() > LEAST_S && gap.endS() > from && gap.startS() < to) {
                longest = Math.max(longest, gap.lengthS());
            }
        }
        return longest;
    }
}
