package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * How the body gave.
 *
 * @param depthM how far the pelvis sinks from contact to lowest, m, or null
 * @param brakingS the time it takes, s, or null
 * @param meanBrakingG 1 + dropHeight / depth, g, or null
 * @param collapseDegPerS largest rate of spine flexion in the 250 ms after contact, deg/s, or null
 */
public record Braking(
        @Nullable Double depthM,
        @Nullable Double brakingS,
        @Nullable Double meanBrakingG,
        @Nullable Double collapseDegPerS) {}
