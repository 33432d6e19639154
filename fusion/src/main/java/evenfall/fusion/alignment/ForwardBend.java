package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Vector3;

/**
 * One slow bend forward and back up again.
 *
 * @param before the quiet stance it begins from
 * @param after the quiet stance it ends in
 * @param startS when it begins, s on the sensor's clock
 * @param endS when the sensor is upright again, s
 * @param axis what the sensor turned about on the way down, unit vector in sensor axes: the body's left
 * @param share part of the turning that was about this axis, 0 to 1
 * @param depth how far it went, rad
 */
public record ForwardBend(
        Stance before, Stance after, double startS, double endS, Vector3 axis, double share, double depth) {}
