/**
 * The names, units and places of everything measured of a landing: {@link evenfall.report.measure.Measure} lists what
 * tables, blocks and the tidy table call by name.
 */
@NullMarked
package evenfall.report.measure;

import org.jspecify.annotations.NullMarked;
