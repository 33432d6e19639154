/**
 * From sample streams to orientation, posture on one clock, landings and their measures. Pure functions of their input:
 * no files, no clocks, no randomness.
 */
@NullMarked
package evenfall.fusion;

import org.jspecify.annotations.NullMarked;
