package evenfall.report.chart;

import org.jspecify.annotations.Nullable;

/**
 * How a body stands at one moment against the quiet stance, for a line figure; angles in deg with the contract's signs.
 *
 * @param pelvicTilt forward positive
 * @param pelvicObliquity right side lower positive
 * @param pelvicRotation to the left positive
 * @param trunkFlexion forward positive, or null without an upper-back sensor
 * @param trunkLean to the right positive, or null
 * @param twist upper back to the left of the pelvis positive, or null
 * @param forwardM pelvis before the feet, m, or null where not known
 * @param leftM pelvis to the left of the feet, m, or null where not known
 * @param sunkM how far the pelvis has sunk since contact, m
 */
public record BodyPose(
        double pelvicTilt,
        double pelvicObliquity,
        double pelvicRotation,
        @Nullable Double trunkFlexion,
        @Nullable Double trunkLean,
        @Nullable Double twist,
        @Nullable Double forwardM,
        @Nullable Double leftM,
        double sunkM) {

    /** The quiet stance; with a trunk or without. */
    static BodyPose quiet(boolean trunk) {
        Double level = trunk ? Double.valueOf(0) : null;
        return new BodyPose(0, 0, 0, level, level, level, 0.0, 0.0, 0);
    }
}
