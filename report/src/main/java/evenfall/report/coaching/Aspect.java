package evenfall.report.coaching;

import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.report.form.FormJudge;
import evenfall.report.form.FormLimits;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureList;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** What a remark can be about. Floors of spread: common practice, no source. */
enum Aspect {
    STEP_BACK("stepsAfter", Way.MORE, 0.1, FormLimits::stepsBack, Needs.NOTHING),
    BRAKING("meanBrakingG", Way.MORE, 0.3, FormLimits::meanBrakingG, Needs.NOTHING),
    LEAN("trunkLeanDeg.change", Way.EITHER, 1.0, FormLimits::trunkLeanDeg, Needs.HEADING),
    ROTATION("pelvicRotationDeg.change", Way.EITHER, 1.0, FormLimits::pelvicRotationDeg, Needs.HEADING),
    OBLIQUITY("pelvicObliquityDeg.change", Way.EITHER, 1.0, FormLimits::pelvicObliquityDeg, Needs.HEADING),
    TWIST("twistDeg.change", Way.EITHER, 1.5, FormLimits::twistDeg, Needs.HEADING),
    BESIDE_FEET("overFeetM.lateralLowest", Way.EITHER, 0.01, FormLimits::lateralM, Needs.LOWEST),
    BEHIND_FEET("overFeetM.foreAftLowest", Way.LESS, 0.02, FormLimits::behindFeetM, Needs.LOWEST),
    TILT_BACK("pelvicTiltDeg.change", Way.LESS, 1.5, FormLimits::tiltBackDeg, Needs.HEADING),
    SPINE("spineFlexionDeg.change", Way.MORE, 3, FormLimits::spineFlexionDeg, Needs.HEADING),
    COLLAPSE("collapseDegPerS", Way.MORE, 20, FormLimits::collapseDegPerS, Needs.HEADING),
    /** Has no limit: what is hard depends on the height. */
    PEAK("peakG", Way.MORE, 0.5, limits -> Double.POSITIVE_INFINITY, Needs.NOTHING);

    /** Which way a value is a fault. */
    enum Way {
        MORE,
        LESS,
        EITHER
    }

    /** What must be sure for the value to mean anything. */
    enum Needs {
        NOTHING,
        HEADING,
        LOWEST
    }

    private static final Set<LandingFlag> BROKEN =
            Set.of(LandingFlag.GAP, LandingFlag.DEAD_SENSOR, LandingFlag.CUT_SHORT);

    @SuppressWarnings("ImmutableEnumChecker") // Its function holds no state.
    private final Measure measure;

    @SuppressWarnings("ImmutableEnumChecker") // Its function holds no state.
    private final @Nullable Measure sigma;

    private final Way way;
    private final double floor;

    @SuppressWarnings("ImmutableEnumChecker") // The function holds no state.
    private final ToDoubleFunction<FormLimits> limit;

    private final Needs needs;

    Aspect(String name, Way way, double floor, ToDoubleFunction<FormLimits> limit, Needs needs) {
        this.measure = MeasureList.named(name).orElseThrow();
        this.sigma = MeasureList.sigmaOf(measure).orElse(null);
        this.way = way;
        this.floor = floor;
        this.limit = limit;
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

    /** The largest size that is no fault; infinite where there is none. */
    double limit(FormLimits limits) {
        return limit.applyAsDouble(limits);
    }

    /** How large a value is in the direction that is a fault. */
    double size(double value) {
        return switch (way) {
            case MORE -> value;
            case LESS -> -value;
            case EITHER -> Math.abs(value);
        };
    }

    /** How far a value lies from the median on the side that is a fault; below 0 on the other. */
    double beyond(double value, double median) {
        return way == Way.EITHER ? Math.abs(value - median) : size(value) - size(median);
    }

    /** The key of its words, with the side. */
    String key(double value) {
        return "said." + measure.name() + (way == Way.EITHER ? value > 0 ? ".plus" : ".minus" : "");
    }

    /** What a landing says of it; null where that is missing, has no stated error or cannot be trusted. */
    @Nullable
    Reading of(Landing landing) {
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
        Double error = this == BRAKING ? FormJudge.brakingSigma(measures) : sigma == null ? null : sigma.of(measures);
        return value == null || error == null || !Double.isFinite(error)
                ? null
                : new Reading(value, error, this == PEAK && measures.impact().clipped());
    }
}
