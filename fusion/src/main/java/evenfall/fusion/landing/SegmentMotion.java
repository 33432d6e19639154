package evenfall.fusion.landing;

import evenfall.fusion.posture.Motion;
import evenfall.fusion.posture.SmoothedMotion;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SegmentAngles;
import evenfall.fusion.rotation.Vector3;

/** One body segment's angles through a window, on the pelvis's clock, heading zeroed where it is told to be. */
final class SegmentMotion {

    private final SmoothedMotion smoothed;
    private final Motion motion;
    private final Quaternion sensorFromSegment;
    private final ToOwnClock clock;
    private final Quaternion headingBack;

    /** From the pelvis's clock to the sensor's own, s to s. */
    @FunctionalInterface
    interface ToOwnClock {
        double at(double pelvisS);
    }

    /**
     * Angles of a segment.
     *
     * @param segmentFromSensor the mounting
     * @param zeroFromS start of the stretch over which yaw is zero on average, s on the pelvis's clock
     * @param zeroToS its end
     */
    SegmentMotion(
            SmoothedMotion smoothed, Quaternion segmentFromSensor, ToOwnClock clock, double zeroFromS, double zeroToS) {
        this.smoothed = smoothed;
        this.motion = smoothed.motion();
        this.sensorFromSegment = segmentFromSensor.conjugate();
        this.clock = clock;
        double heading = meanYaw(clock.at(zeroFromS), clock.at(zeroToS));
        this.headingBack = Quaternion.about(Vector3.UP, -heading);
    }

    private double meanYaw(double fromS, double toS) {
        int from = motion.indexAt(fromS);
        int to = Math.max(from, motion.indexAt(toS));
        double sine = 0;
        double cosine = 0;
        for (int i = from; i <= to; i++) {
            double yaw = SegmentAngles.of(motion.orientation(i).times(sensorFromSegment))
                    .yaw();
            sine += Math.sin(yaw);
            cosine += Math.cos(yaw);
        }
        return Math.atan2(sine, cosine);
    }

    SmoothedMotion smoothed() {
        return smoothed;
    }

    Motion motion() {
        return motion;
    }

    /** Whether the window reaches a moment of the pelvis's clock. */
    boolean covers(double pelvisS) {
        double own = clock.at(pelvisS);
        return own >= motion.time(0) && own <= motion.time(motion.size() - 1);
    }

    /** The sensor's own clock at a moment of the pelvis's. */
    double ownTime(double pelvisS) {
        return clock.at(pelvisS);
    }

    /** Index in the window at a moment of the pelvis's clock. */
    int indexAt(double pelvisS) {
        return motion.indexAt(clock.at(pelvisS));
    }

    /** Yaw, lean and flexion at a moment of the pelvis's clock. */
    SegmentAngles at(double pelvisS) {
        return SegmentAngles.of(
                headingBack.times(motion.orientationAt(clock.at(pelvisS))).times(sensorFromSegment));
    }

    /** A world vector of the motion, turned so that x points where the segment faced while yaw was zero. */
    Vector3 toZeroHeading(Vector3 world) {
        return headingBack.rotate(world);
    }
}
