package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * Steps and hops after a landing.
 *
 * @param count how many
 * @param direction where they lead as a whole, or null without any
 */
record Steps(int count, @Nullable StepDirection direction) {}
