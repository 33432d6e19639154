package evenfall.report.html;

import evenfall.fusion.landing.Balance;
import evenfall.fusion.landing.Estimate;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.OverFeet;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.landing.StepDirection;
import evenfall.report.html.view.FigureGroup;
import evenfall.report.html.view.FigureView;
import evenfall.report.words.Figures;
import evenfall.report.words.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The measures of a landing in words, grouped by the four questions of form. */
final class FigureWords {

    private static final Words WORDS = Words.beside(FigureWords.class);

    private FigureWords() {}

    /** The figures by question; the groups and figures are the same for every landing. */
    static List<FigureGroup> groups(Measures measures) {
        return List.of(fall(measures), even(measures), feet(measures), spine(measures), shown(measures));
    }

    /** Figures for the scientist. */
    static List<FigureView> science(Measures m) {
        Balance balance = m.balance();
        return List.of(
                plain(
                        "figure.height",
                        "unit.m",
                        m.fall().dropHeightM(),
                        2,
                        m.sigma().dropHeightM()),
                plain(
                        "figure.speed",
                        "unit.speed",
                        m.fall().impactSpeedMS(),
                        2,
                        m.sigma().impactSpeedMS()),
                plain(
                        "figure.flight",
                        "unit.s",
                        m.fall().flightS(),
                        2,
                        m.sigma().flightS()),
                plain("figure.upperBack", "unit.g", m.impact().peakUpperBackG(), 1, null),
                plain("figure.rise", "unit.ms", m.impact().riseMs(), 0, null),
                plain("figure.loading", "unit.gPerS", m.impact().loadingRateGPerS(), 0, null),
                shift("figure.lateral", balance.lateralShift(), "side.left", "side.right"),
                shift("figure.foreAft", balance.foreAftShift(), "side.forward", "side.back"));
    }

    /** A peak at full scale is at least that; where it can be told, what it probably was stands beside it, called so. */
    private static FigureView cutOff(FigureView peak, @Nullable Estimate estimated) {
        if (estimated == null) {
            return new FigureView(peak.label(), WORDS.say("atLeast", peak.value()), peak.error());
        }
        FigureView probable = plain("figure.peak", "unit.g", estimated.value(), 1, estimated.sigma());
        return new FigureView(
                peak.label(), WORDS.say("atLeastEstimated", peak.value(), probable.value()), probable.error());
    }

    private static FigureGroup fall(Measures m) {
        FigureView peak =
                plain("figure.peak", "unit.g", m.impact().peakG(), 1, m.sigma().peakG());
        return group(
                "question.fall",
                m.impact().clipped() ? cutOff(peak, m.impact().peakEstimatedG()) : peak,
                plain("figure.braking", "unit.g", m.braking().meanBrakingG(), 1, null),
                plain(
                        "figure.depth",
                        "unit.m",
                        m.braking().depthM(),
                        2,
                        m.sigma().depthM()),
                plain("figure.time", "unit.s", m.braking().brakingS(), 2, null));
    }

    private static FigureGroup even(Measures m) {
        Posture posture = m.posture();
        OverFeet feet = m.balance().overFeet();
        return group(
                "question.even",
                angle("figure.turned", posture.pelvicRotation(), "side.left", "side.right"),
                angle("figure.level", posture.pelvicObliquity(), "side.right", "side.left"),
                angle("figure.lean", posture.trunkLean(), "side.right", "side.left"),
                angle("figure.twist", posture.twist(), "side.left", "side.right"),
                sided(
                        "figure.beside",
                        "unit.m",
                        feet == null ? null : feet.lateralLowest(),
                        2,
                        feet == null ? null : feet.sigmaLateral(),
                        "side.left",
                        "side.right"));
    }

    private static FigureGroup feet(Measures m) {
        OverFeet feet = m.balance().overFeet();
        return group(
                "question.feet",
                sided(
                        "figure.behind",
                        "unit.m",
                        feet == null ? null : feet.foreAftLowest(),
                        2,
                        feet == null ? null : feet.sigmaForeAft(),
                        "side.before",
                        "side.behind"),
                new FigureView(WORDS.say("figure.steps"), steps(m.balance()), ""),
                angle("figure.tilt", m.posture().pelvicTilt(), "side.forward", "side.back"));
    }

    private static FigureGroup spine(Measures m) {
        return group(
                "question.spine",
                angle("figure.folded", m.posture().spineFlexion(), "side.forward", "side.back"),
                plain(
                        "figure.collapse",
                        "unit.degreesPerSecond",
                        m.braking().collapseDegPerS(),
                        0,
                        m.sigma().collapseDegPerS()));
    }

    private static FigureGroup shown(Measures m) {
        return group("question.shown", angle("figure.trunk", m.posture().trunkFlexion(), "side.forward", "side.back"));
    }

    private static FigureGroup group(String question, FigureView... figures) {
        return new FigureGroup(WORDS.say(question), List.of(figures));
    }

    private static FigureView angle(String label, @Nullable Excursion angle, String plus, String minus) {
        return sided(
                label,
                "unit.degrees",
                angle == null ? null : angle.change(),
                1,
                angle == null ? null : angle.sigma(),
                plus,
                minus);
    }

    private static FigureView shift(String label, @Nullable Estimate shift, String plus, String minus) {
        return sided(
                label,
                "unit.m",
                shift == null ? null : shift.value(),
                2,
                shift == null ? null : shift.sigma(),
                plus,
                minus);
    }

    private static FigureView plain(
            String label, String unit, @Nullable Double value, int decimals, @Nullable Double sigma) {
        if (value == null || !Double.isFinite(value)) {
            return missing(label);
        }
        return new FigureView(
                WORDS.say(label), WORDS.say(unit, Figures.fixed(value, decimals)), error(sigma, decimals));
    }

    private static FigureView sided(
            String label,
            String unit,
            @Nullable Double value,
            int decimals,
            @Nullable Double sigma,
            String plus,
            String minus) {
        if (value == null || !Double.isFinite(value)) {
            return missing(label);
        }
        String size = Figures.size(value, decimals);
        String withUnit = WORDS.say(unit, size);
        boolean zero = size.equals(Figures.size(0.0, decimals));
        return new FigureView(
                WORDS.say(label),
                zero ? withUnit : WORDS.say(value > 0 ? plus : minus, withUnit),
                error(sigma, decimals));
    }

    private static FigureView missing(String label) {
        return new FigureView(WORDS.say(label), WORDS.say("notMeasured"), "");
    }

    /** One standard deviation with its sign, or nothing where it is not known. */
    static String error(@Nullable Double sigma, int decimals) {
        if (sigma == null || !Double.isFinite(sigma)) {
            return "";
        }
        String size = Figures.fixed(sigma, decimals);
        return sigma > 0 && size.equals(Figures.fixed(0.0, decimals))
                ? WORDS.say("error.under", Figures.fixed(Math.pow(10, -decimals), decimals))
                : WORDS.say("error", size);
    }

    private static String steps(Balance balance) {
        Integer steps = balance.stepsAfter();
        if (steps == null) {
            return WORDS.say("notMeasured");
        }
        if (steps == 0) {
            return WORDS.say("steps.none");
        }
        StepDirection direction = balance.stepDirection();
        return WORDS.say("steps.some", steps, WORDS.say("steps." + (direction == null ? "unknown" : direction.code())));
    }
}
