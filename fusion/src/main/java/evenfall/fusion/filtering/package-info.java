/**
 * Low-pass filters of second order for signals on an even clock, run one way or both ways, and derivatives.
 *
 * <p>{@link evenfall.fusion.filtering.Butterworth} and {@link evenfall.fusion.filtering.ChannelClass} make a
 * {@link evenfall.fusion.filtering.Biquad}; {@link evenfall.fusion.filtering.ZeroPhase} runs it forward and backward.
 */
@NullMarked
package evenfall.fusion.filtering;

import org.jspecify.annotations.NullMarked;
