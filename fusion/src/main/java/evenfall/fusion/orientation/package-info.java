/**
 * Orientation of one sensor from its accelerometer and gyroscope: the filters, their parameters and the track they
 * leave behind.
 */
@NullMarked
package evenfall.fusion.orientation;

import org.jspecify.annotations.NullMarked;
