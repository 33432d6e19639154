/**
 * Landings: what they are, when their moments were, and what is measured of them. Results are in s, g, m and degrees, with
 * the contract's signs: flexion forward, lean right and turn left are positive.
 */
@NullMarked
package evenfall.fusion.landing;

import org.jspecify.annotations.NullMarked;
