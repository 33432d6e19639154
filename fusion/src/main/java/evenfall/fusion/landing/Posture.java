package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/** The seven angles of a landing; those that need the upper back are null without it. */
public record Posture(
        @Nullable Excursion trunkFlexion,
        @Nullable Excursion trunkLean,
        @Nullable Excursion pelvicRotation,
        @Nullable Excursion pelvicTilt,
        @Nullable Excursion pelvicObliquity,
        @Nullable Excursion twist,
        @Nullable Excursion spineFlexion) {}
