package evenfall.report.coaching;

import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import evenfall.report.form.FormJudge;
import evenfall.report.form.FormStandard;
import evenfall.report.form.Judged;
import evenfall.report.form.Way;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureList;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a remark can be about. Floors of spread: common practice, no source. */
enum Aspect {
    STEP_BACK(Judged.STEPS_BACK, 0.1, Needs.NOTHING),
    BRAKING(Judged.BRAKING, 0.3, Needs.NOTHING),
    LEAN(Judged.LEAN, 1.0, Needs.HEADING),
    ROTATION(Judged.ROTATION, 1.0, Needs.HEADING),
    OBLIQUITY(Judged.OBLIQUITY, 1.0, Needs.HEADING),
    TWIST(Judged.TWIST, 1.5, Needs.HEADING),
    BESIDE_FEET(Judged.BESIDE_FEET, 0.01, Needs.LOWEST),
    BEHIND_FEET(Judged.BEHIND_FEET, 0.02, Needs.LOWEST),
    TILT_BACK(Judged.TILT_BACK, 1.5, Needs.HEADING),
    SPINE(Judged.SPINE, 3, Needs.HEADING),
    COLLAPSE(Judged.COLLAPSE, 20, Needs.HEADING),
    /** Has no limit: what is hard depends on the height. */
    PEAK(Judged.PEAK, 0.5, Needs.NOTHING);

    /** What must be sure for the value to mean anything. */
    enum Needs {
        NOTHING,
        HEADING,
        LOWEST
    }

    private static final Set<LandingFlag> BROKEN =
            Set.of(LandingFlag.GAP, LandingFlag.DEAD_SENSOR, LandingFlag.WRONG_UNIT, LandingFlag.CUT_SHORT);

    @SuppressWarnings("ImmutableEnumChecker") // A record of constants.
    private final Measure measure;

    @SuppressWarnings("ImmutableEnumChecker") // A record of constants.
    private final @Nullable Measure sigma;

    private final Judged judged;
    private final double floor;
    private final Needs needs;

    Aspect(Judged judged, double floor, Needs needs) {
        this.judged = judged;
        this.measure = judged.measure();
        this.sigma = MeasureList.sigmaOf(measure).orElse(null);
        this.floor = floor;
        this.needs = needs;
    }

    /** Whether it is about the measure of that name. */
    boolean isOf(String name) {
        return measure.name().equals(name);
    }

    /** The least a spread counts as, in the measure's unit. */
    double floor() {
        return floor;
    }

    /** The largest size that is no fault on the side of a value; infinite where there is none. */
    double limit(FormStandard standard, double value, @Nullable Side side) {
        return this == PEAK ? Double.POSITIVE_INFINITY : standard.size(judged, value, side);
    }

    /** How large a value is in the direction that is a fault. */
    double size(double value) {
        return judged.way().size(value);
    }

    /** How far a value lies from the median on the side that is a fault; below 0 on the other. */
    double beyond(double value, double median) {
        return judged.way() == Way.EITHER ? Math.abs(value - median) : size(value) - size(median);
    }

    /** The key of its words, with the side. */
    String key(double value) {
        return "said." + measure.name() + (judged.way() == Way.EITHER ? value > 0 ? ".plus" : ".minus" : "");
    }

    /** What a landing says of it; null where that is missing, has no stated error or cannot be trusted. */
    @Nullable Reading of(Landing landing) {
        Measures measures = landing.measures();
        Set<LandingFlag> flags = landing.flags();
        if (measures == null || flags.stream().anyMatch(BROKEN::contains)) {
            return null;
        }
        if (needs != Needs.NOTHING && flags.contains(LandingFlag.HEADING_UNKNOWN)) {
            return null;
        }
        if (needs == Needs.LOWEST && flags.contains(LandingFlag.LOWEST_UNSURE)) {
            return null;
        }
        if (this == STEP_BACK) {
            Double steps = FormJudge.stepsBack(measures.balance());
            return steps == null ? null : new Reading(steps, 0, false);
        }
        Double value = measure.of(measures);
        Double error = sigma == null ? null : sigma.of(measures);
        return value == null || error == null || !Double.isFinite(error)
                ? null
                : new Reading(value, error, this == PEAK && measures.impact().clipped());
    }
}
