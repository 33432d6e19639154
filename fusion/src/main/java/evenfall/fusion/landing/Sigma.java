package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/** One standard deviation of the error of each moment and measure that has no place of its own for it; units as there. */
public record Sigma(
        double contactS,
        @Nullable Double flightS,
        @Nullable Double impactSpeedMS,
        @Nullable Double dropHeightM,
        double peakG,
        @Nullable Double depthM,
        @Nullable Double meanBrakingG,
        @Nullable Double collapseDegPerS) {}
