package evenfall.fusion.analysis;

import evenfall.fusion.alignment.MountingMethod;

/**
 * How a segment stands at its newest sample.
 *
 * @param timeS of that sample, s on the sensor's clock
 * @param flexionDeg forward positive: the pelvis's tilt, the trunk's flexion
 * @param leanDeg to the right positive: the pelvis's obliquity, the trunk's lean
 * @param method how the mounting is known so far; without bends, take-offs or axes only gravity is, and forward is a guess
 */
public record Level(double timeS, double flexionDeg, double leanDeg, MountingMethod method) {}
