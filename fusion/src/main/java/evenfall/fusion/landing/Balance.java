package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * Where the pelvis went and stood, and what the feet did.
 *
 * @param lateralShift pelvis displacement from contact to contact + 0.3 s, left positive, m, or null
 * @param foreAftShift the same forward
 * @param overFeet place over the feet, or null where the feet moved or no stance followed
 * @param stepsAfter steps or hops between contact and settled, or null if it cannot be told
 * @param stepDirection where they lead, or null without steps
 * @param footSuggested first or only foot where the sensors can tell, else null
 */
public record Balance(
        @Nullable Estimate lateralShift,
        @Nullable Estimate foreAftShift,
        @Nullable OverFeet overFeet,
        @Nullable Integer stepsAfter,
        @Nullable StepDirection stepDirection,
        @Nullable Side footSuggested) {}
