package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Quaternion;

/**
 * How a sensor sits on its segment.
 *
 * @param segmentFromSensor rotates sensor axes into segment axes (x forward, y left, z up)
 * @param method how it was found
 * @param sigmaDeg one standard deviation of the heading part's error, deg
 */
public record Mounting(Quaternion segmentFromSensor, MountingMethod method, double sigmaDeg) {}
