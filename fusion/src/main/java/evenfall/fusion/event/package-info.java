/**
 * Finds what happened in a recording: landings, runs of steps, falls. Needs orientation but no mounting: what makes a
 * landing shows in the world-vertical acceleration of the pelvis.
 */
@NullMarked
package evenfall.fusion.event;

import org.jspecify.annotations.NullMarked;
