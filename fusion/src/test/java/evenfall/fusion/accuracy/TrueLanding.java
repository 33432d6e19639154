package evenfall.fusion.accuracy;

import evenfall.fixtures.truth.BodyAngle;
import evenfall.fixtures.truth.OverFeetTruth;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What really happened at a landing, whoever knows it. Times in s from the pelvis stream's first sample.
 *
 * @param speedMS downward at contact
 * @param recordedPeakG the pelvis sensor's largest sample
 * @param bodyPeakG what a sensor screwed to the pelvis would have shown without any fault
 * @param overFeet null where the feet moved
 * @param stepped whether a step or hop came before the person settled
 */
record TrueLanding(
        double contactS,
        double flightS,
        double lowestS,
        @Nullable Double settledS,
        double speedMS,
        double depthM,
        double recordedPeakG,
        double bodyPeakG,
        boolean clipped,
        double collapseDegPerS,
        Map<BodyAngle, Angle> angles,
        double shiftForwardM,
        double shiftLeftM,
        @Nullable OverFeetTruth overFeet,
        boolean stepped) {

    private static final double GRAVITY = 9.80665;
    /** Where both ways differ by less, deg, either may be the farther one. */
    private static final double ALIKE_DEG = 1;

    TrueLanding {
        angles = Map.copyOf(angles);
    }

    /**
     * An angle, deg.
     *
     * @param contact as the contract counts it: from the quiet stance
     * @param up how far it goes above that within 0.6 s, 0 or more
     * @param down how far below, 0 or less
     */
    record Angle(double contact, double up, double down) {

        /** The change that a measured one has to be held against. */
        double change(double measured) {
            if (Math.abs(up + down) < ALIKE_DEG) {
                return Math.abs(measured - up) < Math.abs(measured - down) ? up : down;
            }
            return farther();
        }

        /** The change to the side to which it goes farther. */
        double farther() {
            return up > -down ? up : down;
        }
    }

    Angle angle(BodyAngle which) {
        Angle angle = angles.get(which);
        if (angle == null) {
            throw new IllegalArgumentException("no truth for " + which);
        }
        return angle;
    }

    double dropM() {
        return speedMS * speedMS / (2 * GRAVITY);
    }

    /** 1 + drop height / depth (work and energy). */
    double brakingG() {
        return 1 + dropM() / depthM;
    }
}
