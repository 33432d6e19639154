/**
 * How right the program is: scenarios whose truth is known, the errors there, and the page that shows them. Tests hold bounds
 * on the same figures. Entry: {@link evenfall.fusion.accuracy.AccuracyBench}.
 */
@NullMarked
package evenfall.fusion.accuracy;

import org.jspecify.annotations.NullMarked;
