package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * Where the pelvis is less where it stands quietly afterwards, m, in the heading at contact: forward and left are
 * positive.
 */
public record OverFeet(
        double foreAftContact,
        @Nullable Double foreAftLowest,
        double lateralContact,
        @Nullable Double lateralLowest,
        double sigmaForeAft,
        double sigmaLateral) {}
