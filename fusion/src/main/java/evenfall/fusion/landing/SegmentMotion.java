package evenfall.fusion.landing;

import evenfall.fusion.alignment.StrapGive;
import evenfall.fusion.filtering.Biquad;
import evenfall.fusion.filtering.Butterworth;
import evenfall.fusion.filtering.ZeroPhase;
import evenfall.fusion.posture.Covariance;
import evenfall.fusion.posture.Motion;
import evenfall.fusion.posture.SmoothedMotion;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SegmentAngles;
import evenfall.fusion.rotation.Vector3;

/** One body segment's angles through a window, on the pelvis's clock, heading zeroed where it is told to be. */
final class SegmentMotion {

    /** A strap follows the force up to about here, Hz: usual straps ring at 20 to 40. */
    private static final double STRAP_HZ = 25;

    private final SmoothedMotion smoothed;
    private final Motion motion;
    private final Quaternion sensorFromSegment;
    private final ToOwnClock clock;
    private final boolean held;
    private final Quaternion headingBack;
    /** How far the sensor is tipped on its strap at each sample, rad: to the right, forward. */
    private final double[] tippedRight;

    private final double[] tippedForward;

    /** From the pelvis's clock to the sensor's own, s to s. */
    @FunctionalInterface
    interface ToOwnClock {
        double at(double pelvisS);
    }

    /**
     * Angles of a segment.
     *
     * @param body the segment
     * @param clock from the pelvis's clock to the sensor's own
     * @param zeroFromS start of the stretch over which yaw is zero on average, s on the pelvis's clock
     * @param zeroToS its end
     */
    SegmentMotion(LandingScene.Body body, ToOwnClock clock, double zeroFromS, double zeroToS) {
        this.smoothed = body.motion();
        this.motion = smoothed.motion();
        this.sensorFromSegment = body.segmentFromSensor().conjugate();
        this.tippedRight = new double[motion.size()];
        this.tippedForward = new double[motion.size()];
        tip(body.segmentFromSensor(), body.give());
        this.clock = clock;
        this.held = body.held();
        double heading = meanYaw(clock.at(zeroFromS), clock.at(zeroToS));
        this.headingBack = Quaternion.about(Vector3.UP, -heading);
    }

    private void tip(Quaternion segmentFromSensor, StrapGive give) {
        int n = motion.size();
        double rateHz = motion.stream().rateHz();
        if (STRAP_HZ >= rateHz / 2) {
            return;
        }
        follow(segmentFromSensor, give);
        Biquad strap = Butterworth.lowPass(STRAP_HZ, rateHz);
        System.arraycopy(ZeroPhase.filter(strap, tippedRight), 0, tippedRight, 0, n);
        System.arraycopy(ZeroPhase.filter(strap, tippedForward), 0, tippedForward, 0, n);
    }

    private void follow(Quaternion segmentFromSensor, StrapGive give) {
        for (int i = 0; i < motion.size(); i++) {
            follow(i, segmentFromSensor, give);
        }
    }

    private void follow(int i, Quaternion segmentFromSensor, StrapGive give) {
        Vector3 force = segmentFromSensor.rotate(
                new Vector3(motion.rawForce(i, 0), motion.rawForce(i, 1), motion.rawForce(i, 2)));
        tippedRight[i] = give.right(force.y());
        tippedForward[i] = give.forward(force.x(), force.z());
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

    /** Whether its strap stayed in place through the landing. */
    boolean held() {
        return held;
    }

    /** The segment's left in the sensor's axes. */
    Vector3 sideways() {
        return sensorFromSegment.rotate(Vector3.Y);
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
        return momentAt(pelvisS).angles();
    }

    /** The segment at a moment of the pelvis's clock. */
    BodyMoment.Segment momentAt(double pelvisS) {
        double own = clock.at(pelvisS);
        int i = motion.indexAt(own);
        int next = Math.min(i + 1, motion.size() - 1);
        double dt = motion.time(next) - motion.time(i);
        double part = dt > 0 ? Math.max(0, Math.min(1, (own - motion.time(i)) / dt)) : 0;
        double right = tippedRight[i] + part * (tippedRight[next] - tippedRight[i]);
        double forward = tippedForward[i] + part * (tippedForward[next] - tippedForward[i]);
        SegmentAngles angles = SegmentAngles.of(headingBack
                .times(motion.orientationAt(own))
                .times(sensorFromSegment)
                .times(StrapGive.turn(-right, -forward)));
        return new BodyMoment.Segment(angles, forward, right);
    }

    /**
     * One standard deviation of the error of the turn between two moments, without what the gyroscope's scale does.
     *
     * @param leanDeg about forward, deg
     * @param flexionDeg about the left, deg
     * @param yawDeg about the vertical, deg
     */
    record TurnSigmas(double leanDeg, double flexionDeg, double yawDeg) {}

    /** How sure the turn between two moments of the pelvis's clock is, about the axes of the segment at the first. */
    TurnSigmas turnSigmas(double fromS, double toS) {
        int from = indexAt(fromS);
        double yaw = SegmentAngles.of(motion.orientation(from).times(sensorFromSegment))
                .yaw();
        Covariance turn = smoothed.turnBetween(from, indexAt(toS));
        Vector3 forward = new Vector3(Math.cos(yaw), Math.sin(yaw), 0);
        return new TurnSigmas(
                Math.toDegrees(turn.along(forward)),
                Math.toDegrees(turn.along(Vector3.UP.cross(forward))),
                Math.toDegrees(turn.along(Vector3.UP)));
    }

    /** Turns a vector whose x points where the segment faced while yaw was zero so that x points where it faces at a moment. */
    Quaternion toHeadingAt(double pelvisS) {
        return Quaternion.about(Vector3.UP, -at(pelvisS).yaw());
    }

    /** A world vector of the motion, turned so that x points where the segment faced while yaw was zero. */
    Vector3 toZeroHeading(Vector3 world) {
        return headingBack.rotate(world);
    }

    /** The other way round. */
    Vector3 fromZeroHeading(Vector3 zeroed) {
        return headingBack.rotateBack(zeroed);
    }
}
