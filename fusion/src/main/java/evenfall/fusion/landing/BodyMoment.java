package evenfall.fusion.landing;

import evenfall.fusion.rotation.SegmentAngles;
import org.jspecify.annotations.Nullable;

/**
 * Both segments at one moment.
 *
 * @param pelvis the pelvis
 * @param upper the upper back; the pelvis again where it has no sensor
 */
record BodyMoment(Segment pelvis, Segment upper) {

    /**
     * The moment of the pelvis's clock, s.
     *
     * @param upper the upper back, or null without a sensor there
     */
    static BodyMoment at(double timeS, SegmentMotion pelvis, @Nullable SegmentMotion upper) {
        Segment own = pelvis.momentAt(timeS);
        return new BodyMoment(own, upper == null ? own : upper.momentAt(timeS));
    }

    /**
     * One segment.
     *
     * @param angles its angles
     * @param forwardTip how far its sensor is held to be tipped forward on its strap, rad
     * @param rightTip the same to the right, rad
     */
    record Segment(SegmentAngles angles, double forwardTip, double rightTip) {}

    double rotation() {
        return pelvis.angles.yawDegrees();
    }

    double upperRotation() {
        return upper.angles.yawDegrees();
    }

    double tilt() {
        return pelvis.angles.flexionDegrees();
    }

    double obliquity() {
        return pelvis.angles.leanDegrees();
    }

    double flexion() {
        return upper.angles.flexionDegrees();
    }

    double lean() {
        return upper.angles.leanDegrees();
    }

    double twist() {
        return Math.toDegrees(Math.IEEEremainder(upper.angles.yaw() - pelvis.angles.yaw(), 2 * Math.PI));
    }

    double spineFlexion() {
        return flexion() - tilt();
    }
}
