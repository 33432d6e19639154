package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * The way down.
 *
 * @param flightS contact minus take-off, s, or null without a take-off
 * @param impactSpeedMS downward pelvis speed at contact, m/s, or null
 * @param dropHeightM impactSpeed² / (2 g), m, or null
 */
public record Fall(
        @Nullable Double flightS,
        @Nullable Double impactSpeedMS,
        @Nullable Double dropHeightM) {}
