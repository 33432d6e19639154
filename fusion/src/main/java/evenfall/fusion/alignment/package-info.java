/**
 * What ties sensors to the body and to each other: stillness, the opening routine, mounting and clocks.
 */
@NullMarked
package evenfall.fusion.alignment;

import org.jspecify.annotations.NullMarked;
