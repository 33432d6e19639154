package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * When a landing's moments were, s on the pelvis's clock from its first sample.
 *
 * @param takeoffS last foot off, or null if it cannot be told
 * @param contactS first foot contact
 * @param peakS the pelvis resultant's peak
 * @param lowestS lowest point of the pelvis within 1 s of contact and before settled, or null
 * @param settledS start of the first 300 ms with pelvis speed below 0.05 m/s and turn rate below 10 deg/s, or null
 */
public record Moments(
        @Nullable Double takeoffS,
        double contactS,
        double peakS,
        @Nullable Double lowestS,
        @Nullable Double settledS) {}
