package evenfall.report.form;

import evenfall.fusion.landing.Balance;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Fall;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.OverFeet;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.landing.Sigma;
import evenfall.fusion.landing.StepDirection;
import org.jspecify.annotations.Nullable;

/**
 * Judges a landing by the four questions and a set of limits.
 *
 * <p>A question fails when any of its measures lies beyond its limit. None failed is held, one strained, two or more
 * lost; a measure that is missing speaks against nobody. What is usual for an athlete at a height takes part once
 * twenty landings are known, and until then is not counted as missing.
 */
public final class FormJudge {

    private final FormLimits limits;

    /** A judge by {@code limits}. */
    public FormJudge(FormLimits limits) {
        this.limits = limits;
    }

    /** The limits in force. */
    public FormLimits limits() {
        return limits;
    }

    /** The verdict on one landing. */
    public FormVerdict judge(Measures measures) {
        Hearing hearing = new Hearing();
        takesUpTheFall(hearing, measures);
        staysEven(hearing, measures);
        staysOverTheFeet(hearing, measures);
        spineStaysLong(hearing, measures);
        return hearing.verdict();
    }

    private void takesUpTheFall(Hearing hearing, Measures measures) {
        Double braking = measures.braking().meanBrakingG();
        hearing.hear(
                FormQuestion.TAKES_UP_THE_FALL,
                "meanBrakingG",
                braking,
                limits.meanBrakingG(),
                brakingSigma(measures),
                () -> "mean braking " + FormWords.g(braking),
                FormWords.g(limits.meanBrakingG()));
    }

    private void staysEven(Hearing hearing, Measures measures) {
        Posture posture = measures.posture();
        even(
                hearing,
                "pelvicRotationDeg.change",
                posture.pelvicRotation(),
                limits.pelvicRotationDeg(),
                FormWords::pelvisTurned);
        even(
                hearing,
                "pelvicObliquityDeg.change",
                posture.pelvicObliquity(),
                limits.pelvicObliquityDeg(),
                FormWords::pelvisDropped);
        even(hearing, "trunkLeanDeg.change", posture.trunkLean(), limits.trunkLeanDeg(), FormWords::trunkLeaned);
        even(hearing, "twistDeg.change", posture.twist(), limits.twistDeg(), FormWords::twisted);
        OverFeet feet = measures.balance().overFeet();
        Double lateral = feet == null ? null : feet.lateralLowest();
        hearing.hear(
                FormQuestion.STAYS_EVEN,
                "overFeetM.lateralLowest",
                size(lateral),
                limits.lateralM(),
                feet == null ? null : feet.sigmaLateral(),
                () -> FormWords.besideFeet(lateral),
                FormWords.metres(limits.lateralM()));
    }

    private void staysOverTheFeet(Hearing hearing, Measures measures) {
        OverFeet feet = measures.balance().overFeet();
        Double behind = feet == null ? null : negated(feet.foreAftLowest());
        hearing.hear(
                FormQuestion.STAYS_OVER_THE_FEET,
                "overFeetM.foreAftLowest",
                behind,
                limits.behindFeetM(),
                feet == null ? null : feet.sigmaForeAft(),
                () -> FormWords.behindFeet(behind),
                FormWords.metres(limits.behindFeetM()));
        Double steps = stepsBack(measures.balance());
        hearing.hear(
                FormQuestion.STAYS_OVER_THE_FEET,
                "stepsAfter",
                steps,
                limits.stepsBack(),
                null,
                () -> FormWords.stepsBack(steps),
                limits.stepsBack() == 0 ? "none" : Integer.toString(limits.stepsBack()));
        Excursion tilt = measures.posture().pelvicTilt();
        Double back = tilt == null ? null : Double.valueOf(-tilt.change());
        hearing.hear(
                FormQuestion.STAYS_OVER_THE_FEET,
                "pelvicTiltDeg.change",
                back,
                limits.tiltBackDeg(),
                tilt == null ? null : tilt.sigma(),
                () -> "pelvis tilted back " + FormWords.degrees(back),
                FormWords.degreeLimit(limits.tiltBackDeg()));
    }

    private void spineStaysLong(Hearing hearing, Measures measures) {
        Excursion spine = measures.posture().spineFlexion();
        Double folded = spine == null ? null : Double.valueOf(spine.change());
        hearing.hear(
                FormQuestion.SPINE_STAYS_LONG,
                "spineFlexionDeg.change",
                folded,
                limits.spineFlexionDeg(),
                spine == null ? null : spine.sigma(),
                () -> "spine folded forward " + FormWords.degrees(folded),
                FormWords.degreeLimit(limits.spineFlexionDeg()));
        Double collapse = measures.braking().collapseDegPerS();
        hearing.hear(
                FormQuestion.SPINE_STAYS_LONG,
                "collapseDegPerS",
                collapse,
                limits.collapseDegPerS(),
                measures.sigma().collapseDegPerS(),
                () -> "spine folded at " + FormWords.degreesPerSecond(collapse),
                FormWords.degreesPerSecond(limits.collapseDegPerS()));
    }

    private static void even(
            Hearing hearing, String measure, @Nullable Excursion angle, double limit, FormWords.Turned words) {
        Double change = angle == null ? null : Double.valueOf(angle.change());
        hearing.hear(
                FormQuestion.STAYS_EVEN,
                measure,
                size(change),
                limit,
                angle == null ? null : angle.sigma(),
                () -> words.of(change == null ? 0 : change),
                FormWords.degreeLimit(limit));
    }

    /** Errors of height and depth taken as independent: first order propagation through 1 + h / d. */
    public static @Nullable Double brakingSigma(Measures measures) {
        Fall fall = measures.fall();
        Sigma sigma = measures.sigma();
        Double height = fall.dropHeightM();
        Double depth = measures.braking().depthM();
        Double heightSigma = sigma.dropHeightM();
        Double depthSigma = sigma.depthM();
        if (height == null || depth == null || heightSigma == null || depthSigma == null || depth == 0) {
            return null;
        }
        return Math.hypot(heightSigma / depth, height * depthSigma / (depth * depth));
    }

    /** Steps back after the landing; null where it is not known whether there were any. */
    public static @Nullable Double stepsBack(Balance balance) {
        Integer steps = balance.stepsAfter();
        if (steps == null || (steps > 0 && balance.stepDirection() == null)) {
            return null;
        }
        return balance.stepDirection() == StepDirection.BACK ? Double.valueOf(steps) : Double.valueOf(0);
    }

    private static @Nullable Double size(@Nullable Double value) {
        return value == null ? null : Double.valueOf(Math.abs(value));
    }

    private static @Nullable Double negated(@Nullable Double value) {
        return value == null ? null : Double.valueOf(-value);
    }
}
