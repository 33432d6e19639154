package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * How hard it hit.
 *
 * @param peakG largest unfiltered resultant of the pelvis, g
 * @param peakUpperBackG the same of the upper back, or null
 * @param clipped whether the pelvis accelerometer stood at full scale from 5 ms before to 250 ms after contact
 * @param peakEstimatedG where the peak was cut off at full scale, how high it probably was, g; else, or where it cannot be
 *     told, null
 * @param riseMs 10 % to 90 % of the first peak, ms, or null
 * @param loadingRateGPerS mean slope over that rise, g/s, or null
 */
public record Impact(
        double peakG,
        @Nullable Double peakUpperBackG,
        boolean clipped,
        @Nullable Estimate peakEstimatedG,
        @Nullable Double riseMs,
        @Nullable Double loadingRateGPerS) {}
