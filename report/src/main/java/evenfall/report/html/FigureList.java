package evenfall.report.html;

import evenfall.report.form.FormQuestion;
import evenfall.report.glossary.Term;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which figures answer which question, in the order pages show them. */
final class FigureList {

    /**
     * The figures of one question.
     *
     * @param question key of the question
     * @param judged the question form is judged by, or null where the figures are only shown
     */
    record Group(String question, @Nullable FormQuestion judged, List<Figure> figures) {}

    static final Figure PEAK = Figure.plain(Term.PEAK, "peakG", "unit.g", 1);
    static final Figure STEPS = Figure.plain(Term.STEPS, "stepsAfter", "unit.none", 0);

    static final List<Group> GROUPS = List.of(
            new Group(
                    "question.fall",
                    FormQuestion.TAKES_UP_THE_FALL,
                    List.of(
                            PEAK,
                            Figure.plain(Term.BRAKING, "meanBrakingG", "unit.g", 1),
                            Figure.plain(Term.DEPTH, "depthM", "unit.m", 2),
                            Figure.plain(Term.TIME, "brakingS", "unit.s", 2))),
            new Group(
                    "question.even",
                    FormQuestion.STAYS_EVEN,
                    List.of(
                            Figure.angle(Term.TURNED, "pelvicRotationDeg", "side.left", "side.right"),
                            Figure.angle(Term.LEVEL, "pelvicObliquityDeg", "side.right", "side.left"),
                            Figure.angle(Term.LEAN, "trunkLeanDeg", "side.right", "side.left"),
                            Figure.angle(Term.TWIST, "twistDeg", "side.left", "side.right"),
                            metres(Term.BESIDE, "overFeetM.lateralLowest", "side.left", "side.right"))),
            new Group(
                    "question.feet",
                    FormQuestion.STAYS_OVER_THE_FEET,
                    List.of(
                            metres(Term.BEHIND, "overFeetM.foreAftLowest", "side.before", "side.behind"),
                            STEPS,
                            Figure.angle(Term.TILT, "pelvicTiltDeg", "side.forward", "side.back"))),
            new Group(
                    "question.spine",
                    FormQuestion.SPINE_STAYS_LONG,
                    List.of(
                            Figure.angle(Term.FOLDED, "spineFlexionDeg", "side.forward", "side.back"),
                            Figure.plain(Term.COLLAPSE, "collapseDegPerS", "unit.degreesPerSecond", 0))),
            new Group(
                    "question.shown",
                    null,
                    List.of(Figure.angle(Term.TRUNK, "trunkFlexionDeg", "side.forward", "side.back"))));

    static final List<Figure> SCIENCE = List.of(
            Figure.plain(Term.HEIGHT, "dropHeightM", "unit.m", 2),
            Figure.plain(Term.SPEED, "impactSpeedMS", "unit.speed", 2),
            Figure.plain(Term.FLIGHT, "flightS", "unit.s", 2),
            Figure.plain(Term.UPPER_BACK, "peakUpperBackG", "unit.g", 1),
            Figure.plain(Term.RISE, "riseMs", "unit.ms", 0),
            Figure.plain(Term.LOADING, "loadingRateGPerS", "unit.gPerS", 0),
            metres(Term.LATERAL, "lateralShiftM", "side.left", "side.right"),
            metres(Term.FORE_AFT, "foreAftShiftM", "side.forward", "side.back"));

    private FigureList() {}

    private static Figure metres(Term term, String measure, String plus, String minus) {
        return new Figure(term, measure, "unit.m", 2, plus, minus);
    }
}
