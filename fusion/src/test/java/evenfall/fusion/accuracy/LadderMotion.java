package evenfall.fusion.accuracy;

import evenfall.fixtures.motion.BendPlan;
import evenfall.fixtures.motion.BodyMotion;
import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.motion.LandingQuantity;
import evenfall.fixtures.motion.Manner;
import evenfall.fixtures.motion.MotionScript;
import evenfall.fixtures.motion.StepAfter;
import evenfall.fixtures.truth.LandingTruth;
import evenfall.fixtures.truth.TruthReader;
import java.util.List;

/**
 * A true motion that every rung of the ladder records anew: landings of different height in which every angle changes.
 *
 * @param truth of its landings, times of the motion
 */
record LadderMotion(long seed, BodyMotion motion, List<LandingTruth> truth) {

    private static final double HEADING_DEG = 37;

    /** How a session is opened. */
    enum Opening {
        FULL,
        SHALLOW,
        ONE_BEND,
        CROOKED,
        NONE
    }

    LadderMotion {
        truth = List.copyOf(truth);
    }

    /** The first {@code landings} of the plans. */
    static LadderMotion of(long seed, Opening opening, int landings) {
        MotionScript script = MotionScript.start(seed, HEADING_DEG * seed);
        open(script, opening);
        for (LandingPlan plan : plans().subList(0, landings)) {
            script.drop(plan).stand(1.5);
        }
        BodyMotion motion = script.build();
        return new LadderMotion(seed, motion, TruthReader.read(motion));
    }

    private static void open(MotionScript script, Opening opening) {
        BendPlan usual = BendPlan.usual();
        switch (opening) {
            case FULL -> script.openingRoutine();
            case SHALLOW -> bends(script, new BendPlan(18, 10, 0, 0, 1.5, 0.1), 2);
            case ONE_BEND -> bends(script, usual, 1);
            case CROOKED -> bends(script, new BendPlan(42, 32, 9, 7, 2, 0.1), 2);
            case NONE -> script.stand(4);
        }
    }

    private static void bends(MotionScript script, BendPlan plan, int times) {
        script.stand(5.5);
        for (int k = 0; k < times; k++) {
            script.bend(plan).stand(1.3);
        }
        script.heelDrop().stand(0.6).heelDrop().stand(2);
    }

    private static List<LandingPlan> plans() {
        return List.of(
                plan(0.5, 7, -4, 14, 9, 6, -5),
                plan(0.8, -8, 5, -6, 16, -7, 6),
                plan(0.35, 4, 4, 10, 5, -4, 4).by(Manner.HOP),
                plan(1.1, -5, -6, 18, 20, 9, -8).with(LandingQuantity.DEPTH, 0.38),
                plan(0.65, 11, 6, 9, -6, 5, 9).with(LandingQuantity.LATERAL_AT_LOWEST, 0.05),
                plan(0.95, -3.5, 3.5, -9, 12, -5, -4)
                        .with(LandingQuantity.FIRST_PULSE_SHARE, 0.5)
                        .then(StepAfter.BACK));
    }

    private static LandingPlan plan(
            double height, double rotation, double obliquity, double tilt, double spine, double lean, double twist) {
        return LandingPlan.fromHeight(height)
                .with(LandingQuantity.PELVIC_ROTATION, rotation)
                .with(LandingQuantity.PELVIC_OBLIQUITY, obliquity)
                .with(LandingQuantity.PELVIC_TILT, tilt)
                .with(LandingQuantity.SPINE_FLEXION, spine)
                .with(LandingQuantity.TRUNK_LEAN, lean)
                .with(LandingQuantity.TWIST, twist);
    }
}
