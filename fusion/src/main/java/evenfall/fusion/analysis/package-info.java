/**
 * The whole way from a recording to its landings.
 */
@NullMarked
package evenfall.fusion.analysis;

import org.jspecify.annotations.NullMarked;
