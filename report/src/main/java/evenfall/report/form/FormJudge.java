package evenfall.report.form;

import evenfall.fusion.landing.Balance;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.StepDirection;
import org.jspecify.annotations.Nullable;

/**
 * Judges a landing by the four questions and a standard.
 *
 * <p>A question fails when any of its measures lies beyond its limit. None failed is held, one strained, two or more
 * lost; a measure that is missing speaks against nobody. What is usual for an athlete at a height takes part once
 * twenty landings are known, and until then is not counted as missing.
 */
public final class FormJudge {

    private final FormStandard standard;

    /** A judge by {@code standard}. */
    public FormJudge(FormStandard standard) {
        this.standard = standard;
    }

    /** What is judged by. */
    public FormStandard standard() {
        return standard;
    }

    /** The verdict on one landing of which nothing is known but what was measured. */
    public FormVerdict judge(Measures measures) {
        return judge(measures, Circumstance.measured(measures));
    }

    /** The verdict on one landing. */
    public FormVerdict judge(Measures measures, Circumstance circumstance) {
        Hearing hearing = new Hearing(circumstance.side());
        for (Judged judged : Judged.values()) {
            if (judged != Judged.PEAK) {
                Limit limit = standard.limit(judged, Footing.of(circumstance.side()));
                hearing.hear(judged, judged.value(measures), judged.sigma(measures), limit);
                continue;
            }
            UsualImpact usual = standard.impact(circumstance);
            if (usual != null) {
                hearing.hearPeak(
                        measures.impact(),
                        measures.sigma().peakG(),
                        usual,
                        usual.above(standard.peakSpreads()),
                        circumstance.heightM());
            }
        }
        return hearing.verdict();
    }

    /** Steps back after the landing; null where it is not known whether there were any. */
    public static @Nullable Double stepsBack(Balance balance) {
        Integer steps = balance.stepsAfter();
        if (steps == null || (steps > 0 && balance.stepDirection() == null)) {
            return null;
        }
        return balance.stepDirection() == StepDirection.BACK ? Double.valueOf(steps) : Double.valueOf(0);
    }
}
