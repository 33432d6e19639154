package evenfall.fusion.landing;

import evenfall.fusion.rotation.SegmentAngles;
import evenfall.fusion.rotation.Vector3;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * One standard deviation of the error of each angle's change, deg, as root sum of squares of independent parts: a fixed one
 * (filter, flesh), the gyroscope's scale as a part of the change, what is left of its bias and an impact, what a wrong
 * heading of the mounting and a stance that is not upright turn over from one axis to another, and what the strap gives.
 *
 * @param pelvis what is known of the pelvis
 * @param upper the same of the upper back; the pelvis's again where it has no sensor
 * @param peakG resultant peak of the pelvis's sensor, g
 * @param clockS one standard deviation of the upper back's clock against the pelvis's, s
 */
record AngleSigmas(Segment pelvis, Segment upper, double peakG, double clockS) {

    /**
     * The fixed part of each angle, deg: what filter and flesh leave where nothing else errs. Those of simulated bodies, and the
     * weakest point: people's may be larger.
     */
    private static final double TRUNK_FLEXION_DEG = 0.075;

    private static final double TRUNK_LEAN_DEG = 0.02;
    private static final double PELVIC_ROTATION_DEG = 0.045;
    private static final double PELVIC_TILT_DEG = 0.16;
    private static final double PELVIC_OBLIQUITY_DEG = 0.01;
    private static final double TWIST_DEG = 0.1;
    private static final double SPINE_FLEXION_DEG = 0.085;
    /** What an impact leaves of the pelvis's tilt besides, for each g of it; on simulated bodies as well. */
    private static final double TILT_DEG_PER_G = 0.0075;

    /** Beyond 60° a lean counts as that, for near lying on the side flexion and yaw are no longer two: common practice, no source. */
    private static final double LEAST_COSINE = 0.5;

    /** Stances are steadier and gaps hide less than the smoother is told: so much of its sigma is true of a turn. */
    private static final double TURN_SHARE = 0.7;
    /** Straps rock fore and aft more than to the sides; a tilt to the side is surer by this. */
    private static final double SIDEWAYS = 0.1;

    /**
     * What is known of one segment's sensor through a landing.
     *
     * @param mounting sigma of the mounting's heading, rad
     * @param turns how sure the turn since contact is about each axis, without the gyroscope's scale
     * @param scale sigma of the gyroscope's scale about each axis of the segment: forward, left, up
     * @param level how far the segment may lean to a side in the stance that is called upright, rad
     */
    record Segment(double mounting, SegmentMotion.TurnSigmas turns, Vector3 scale, double level) {

        /** What mounting and stance do to the lean: heading turns flexion over to the side, folding lessens a lean. */
        private double leanMixed(Change c, ToDoubleFunction<BodyMoment> sine, ToDoubleFunction<BodyMoment> cosine) {
            return Math.toDegrees(Math.hypot(mounting * c.of(sine), level * c.of(cosine)));
        }

        /** What they do to the yaw: a segment that leans turns as it folds. */
        private double yawMixed(Change c, ToDoubleFunction<BodyMoment> sine, ToDoubleFunction<BodyMoment> cosine) {
            return Math.toDegrees(Math.hypot(mounting * c.of(cosine), level * c.of(sine)));
        }
    }

    /**
     * From contact to the moment at which an angle was farthest from there.
     *
     * @param degrees by how much it changed
     * @param aroundContact a moment shortly before contact and one shortly after
     * @param apartS how far apart these are, s
     */
    record Change(
            double degrees, BodyMoment contact, BodyMoment farthest, List<BodyMoment> aroundContact, double apartS) {

        /** How much something else changed meanwhile. */
        double of(ToDoubleFunction<BodyMoment> what) {
            return Math.abs(what.applyAsDouble(farthest) - what.applyAsDouble(contact));
        }

        /** How fast something changes at contact, by the second; where it is farthest it stands. */
        double rate(ToDoubleFunction<BodyMoment> what) {
            double early = what.applyAsDouble(aroundContact.get(0));
            return Math.abs(what.applyAsDouble(aroundContact.get(1)) - early) / apartS;
        }
    }

    double trunkFlexion(Change c) {
        return sum(
                TRUNK_FLEXION_DEG,
                clockS * c.rate(BodyMoment::flexion),
                upper.scale.y() * c.degrees,
                Math.toDegrees(
                        upper.mounting * c.of(m -> Math.sin(m.upper().angles().lean()))),
                Math.toDegrees(c.of(m -> m.upper().forwardTip())),
                TURN_SHARE * upper.turns.flexionDeg());
    }

    double trunkLean(Change c) {
        return sum(
                TRUNK_LEAN_DEG,
                clockS * c.rate(BodyMoment::lean),
                upper.scale.x() * c.degrees,
                upper.leanMixed(c, m -> sine(m.upper()), m -> cosine(m.upper())),
                Math.toDegrees(c.of(m -> m.upper().rightTip())),
                SIDEWAYS * upper.turns.leanDeg());
    }

    double pelvicRotation(Change c) {
        return sum(
                PELVIC_ROTATION_DEG,
                pelvis.scale.z() * c.degrees,
                pelvis.yawMixed(c, m -> sine(m.pelvis()), m -> cosine(m.pelvis())),
                TURN_SHARE * pelvis.turns.yawDeg());
    }

    double pelvicTilt(Change c) {
        return sum(
                PELVIC_TILT_DEG,
                pelvis.scale.y() * c.degrees,
                Math.toDegrees(
                        pelvis.mounting * c.of(m -> Math.sin(m.pelvis().angles().lean()))),
                TILT_DEG_PER_G * peakG,
                Math.toDegrees(c.of(m -> m.pelvis().forwardTip())),
                TURN_SHARE * pelvis.turns.flexionDeg());
    }

    double pelvicObliquity(Change c) {
        return sum(
                PELVIC_OBLIQUITY_DEG,
                pelvis.scale.x() * c.degrees,
                pelvis.leanMixed(c, m -> sine(m.pelvis()), m -> cosine(m.pelvis())),
                Math.toDegrees(c.of(m -> m.pelvis().rightTip())),
                SIDEWAYS * pelvis.turns.leanDeg());
    }

    double twist(Change c) {
        return sum(
                TWIST_DEG,
                clockS * c.rate(BodyMoment::upperRotation),
                Math.hypot(
                        pelvis.scale.z() * c.of(BodyMoment::rotation),
                        upper.scale.z() * c.of(BodyMoment::upperRotation)),
                pelvis.yawMixed(c, m -> sine(m.pelvis()), m -> cosine(m.pelvis())),
                upper.yawMixed(c, m -> sine(m.upper()), m -> cosine(m.upper())),
                TURN_SHARE * Math.hypot(pelvis.turns.yawDeg(), upper.turns.yawDeg()));
    }

    double spineFlexion(Change c) {
        return sum(
                SPINE_FLEXION_DEG,
                clockS * c.rate(BodyMoment::flexion),
                Math.hypot(pelvis.scale.y() * c.of(BodyMoment::tilt), upper.scale.y() * c.of(BodyMoment::flexion)),
                Math.toDegrees(Math.hypot(
                        c.of(m -> m.pelvis().forwardTip()), c.of(m -> m.upper().forwardTip()))),
                TURN_SHARE * Math.hypot(pelvis.turns.flexionDeg(), upper.turns.flexionDeg()));
    }

    private static double sine(BodyMoment.Segment segment) {
        SegmentAngles a = segment.angles();
        return Math.sin(a.flexion()) / Math.max(LEAST_COSINE, Math.cos(a.lean()));
    }

    private static double cosine(BodyMoment.Segment segment) {
        SegmentAngles a = segment.angles();
        return Math.cos(a.flexion()) / Math.max(LEAST_COSINE, Math.cos(a.lean()));
    }

    private static double sum(double... parts) {
        double sum = 0;
        for (double part : parts) {
            sum += part * part;
        }
        return Math.sqrt(sum);
    }
}
