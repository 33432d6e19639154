package evenfall.report.form;

import evenfall.fusion.landing.Measures;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureList;
import evenfall.report.measure.Turning;
import org.jspecify.annotations.Nullable;

/**
 * A measure that form is judged by.
 *
 * <p>Mean braking has no limit of the athlete's own: it is 1 + height / depth and grows with the drop, so that what is usual
 * from low boxes says nothing of higher ones. Neither has the count of steps. Least spreads: common practice, no source.
 */
public enum Judged {
    BRAKING(FormQuestion.TAKES_UP_THE_FALL, "meanBrakingG", Way.MORE, "mean-braking", 0),
    /** Its limit depends on the drop height and is none of these. */
    PEAK(FormQuestion.TAKES_UP_THE_FALL, "peakG", Way.MORE, "peak-spreads", 0),
    ROTATION(FormQuestion.STAYS_EVEN, "pelvicRotationDeg.change", Way.EITHER, "pelvic-rotation", 1.0),
    OBLIQUITY(FormQuestion.STAYS_EVEN, "pelvicObliquityDeg.change", Way.EITHER, "pelvic-obliquity", 1.0),
    LEAN(FormQuestion.STAYS_EVEN, "trunkLeanDeg.change", Way.EITHER, "trunk-lean", 1.0),
    TWIST(FormQuestion.STAYS_EVEN, "twistDeg.change", Way.EITHER, "twist", 1.5),
    BESIDE_FEET(FormQuestion.STAYS_EVEN, "overFeetM.lateralLowest", Way.EITHER, "beside-feet", 0.01),
    BEHIND_FEET(FormQuestion.STAYS_OVER_THE_FEET, "overFeetM.foreAftLowest", Way.LESS, "behind-feet", 0.02),
    STEPS_BACK(FormQuestion.STAYS_OVER_THE_FEET, "stepsAfter", Way.MORE, "steps-back", 0),
    TILT_BACK(FormQuestion.STAYS_OVER_THE_FEET, "pelvicTiltDeg.change", Way.LESS, "tilt-back", 1.5),
    SPINE(FormQuestion.SPINE_STAYS_LONG, "spineFlexionDeg.change", Way.MORE, "spine-flexion", 3),
    COLLAPSE(FormQuestion.SPINE_STAYS_LONG, "collapseDegPerS", Way.MORE, "collapse", 20);

    private final FormQuestion question;

    @SuppressWarnings("ImmutableEnumChecker") // A record of constants.
    private final Measure measure;

    @SuppressWarnings("ImmutableEnumChecker") // A record of constants.
    private final @Nullable Measure sigma;

    private final Way way;
    private final String setting;
    private final double leastSpread;
    private final Turning turning;

    Judged(FormQuestion question, String measure, Way way, String setting, double leastSpread) {
        this.question = question;
        this.measure = MeasureList.named(measure).orElseThrow();
        this.sigma = MeasureList.sigmaOf(this.measure).orElse(null);
        this.way = way;
        this.setting = setting;
        this.leastSpread = leastSpread;
        this.turning = Turning.of(measure);
    }

    /** The question it answers. */
    public FormQuestion question() {
        return question;
    }

    /** The measure. */
    public Measure measure() {
        return measure;
    }

    /** Which way it is a fault. */
    public Way way() {
        return way;
    }

    /** The name of its limit in the coach's file. */
    public String setting() {
        return setting;
    }

    /** Whether an athlete's baseline gives a limit of its own. */
    public boolean canBeOwn() {
        return leastSpread > 0;
    }

    /** The least a spread counts as, in its unit. */
    double leastSpread() {
        return leastSpread;
    }

    /** How a value is turned to the landing foot. */
    Turning turning() {
        return turning;
    }

    /** Whether it has a side, so that what is usual depends on the foot landed on. */
    public boolean hasSide() {
        return turning != Turning.NONE;
    }

    /** What a landing says of it, with the sign results have; null where that is missing. */
    public @Nullable Double value(Measures measures) {
        return this == STEPS_BACK ? FormJudge.stepsBack(measures.balance()) : measure.of(measures);
    }

    /** One standard deviation of that value's error; null where it is not known or, for a count, nothing. */
    public @Nullable Double sigma(Measures measures) {
        return this == STEPS_BACK || sigma == null ? null : sigma.of(measures);
    }
}
