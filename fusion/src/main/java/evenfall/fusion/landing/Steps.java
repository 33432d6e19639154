package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * Steps and hops after a landing.
 *
 * @param count how many
 * @param direction where they lead as a whole, or null without any
 * @param feetMoved whether a foot was lifted without counting as a step
 */
record Steps(int count, @Nullable StepDirection direction, boolean feetMoved) {}
