/**
 * Rotations as unit quaternions and as the angles people read. Hamilton product, scalar first, world from sensor (or
 * segment); world z up. Angles follow rotation, obliquity, tilt (Baker 2001): R = Rz(yaw) Rx(lean) Ry(flexion).
 * Also the vectors that are turned, with how a sensor's readings become such.
 */
@NullMarked
package evenfall.fusion.rotation;

import org.jspecify.annotations.NullMarked;
