package evenfall.report.form;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.landing.Balance;
import evenfall.fusion.landing.Braking;
import evenfall.fusion.landing.Fall;
import evenfall.fusion.landing.Impact;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.landing.Sigma;
import evenfall.fusion.landing.StepDirection;
import evenfall.report.setting.SettingText;
import evenfall.report.setting.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The starting limits here are the table of the project's contract (common practice, no source). */
class FormJudgeTest {

    private final FormJudge judge = new FormJudge(FormStandard.STARTING);

    @Test
    void everythingWithinLimits_isHeldWithoutReasons() {
        FormVerdict verdict = judge.judge(new JudgedCase().measures());

        assertThat(verdict.form()).isEqualTo(Form.HELD);
        assertThat(verdict.reasons()).isEmpty();
        assertThat(verdict.partial()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "meanBrakingG,               5.01, TAKES_UP_THE_FALL,   mean braking 5.0 g",
        "pelvicRotationDeg.change,   6.2,  STAYS_EVEN,          'pelvis turned left 6.2°, left hip behind'",
        "pelvicRotationDeg.change,  -6.2,  STAYS_EVEN,          'pelvis turned right 6.2°, right hip behind'",
        "pelvicObliquityDeg.change,  5.1,  STAYS_EVEN,          pelvis dropped on the right 5.1°",
        "pelvicObliquityDeg.change, -5.1,  STAYS_EVEN,          pelvis dropped on the left 5.1°",
        "trunkLeanDeg.change,        6.1,  STAYS_EVEN,          trunk leaned right 6.1°",
        "trunkLeanDeg.change,       -6.1,  STAYS_EVEN,          trunk leaned left 6.1°",
        "twistDeg.change,            8.1,  STAYS_EVEN,          upper back twisted left against the pelvis 8.1°",
        "twistDeg.change,           -8.1,  STAYS_EVEN,          upper back twisted right against the pelvis 8.1°",
        "overFeetM.lateralLowest,    0.07, STAYS_EVEN,          pelvis 0.07 m to the left of the feet",
        "overFeetM.lateralLowest,   -0.07, STAYS_EVEN,          pelvis 0.07 m to the right of the feet",
        "overFeetM.foreAftLowest,   -0.11, STAYS_OVER_THE_FEET, pelvis 0.11 m behind the feet",
        "stepsAfter,                 1,    STAYS_OVER_THE_FEET, one step back after landing (limit 0)",
        "stepsAfter,                 3,    STAYS_OVER_THE_FEET, 3 steps back after landing",
        "pelvicTiltDeg.change,      -8.5,  STAYS_OVER_THE_FEET, pelvis tilted back 8.5°",
        "spineFlexionDeg.change,     20.4, SPINE_STAYS_LONG,    spine folded forward 20.4°",
        "collapseDegPerS,            210,  SPINE_STAYS_LONG,    spine folded at 210°/s",
    })
    void oneMeasureOverItsLimit_strainsAndSaysSoInWords(
            String measure, double value, FormQuestion question, String words) {
        FormVerdict verdict = judge.judge(new JudgedCase().with(measure, value).measures());

        assertThat(verdict.form()).isEqualTo(Form.STRAINED);
        assertThat(verdict.reasons()).hasSize(1);
        Reason reason = verdict.reasons().get(0);
        assertThat(reason.measure()).isEqualTo(measure);
        assertThat(reason.question()).isEqualTo(question);
        assertThat(reason.over()).isTrue();
        assertThat(reason.text()).startsWith(words).contains("limit");
    }

    @ParameterizedTest
    @CsvSource({
        "meanBrakingG, 5.0",
        "pelvicRotationDeg.change, 6",
        "pelvicRotationDeg.change, -6",
        "pelvicObliquityDeg.change, -5",
        "trunkLeanDeg.change, 6",
        "twistDeg.change, -8",
        "overFeetM.lateralLowest, 0.06",
        "overFeetM.foreAftLowest, -0.10",
        "pelvicTiltDeg.change, -8",
        "spineFlexionDeg.change, 20",
        "collapseDegPerS, 200",
    })
    void aMeasureAtItsLimit_isNotOver(String measure, double value) {
        FormVerdict verdict = judge.judge(new JudgedCase().with(measure, value).measures());

        assertThat(verdict.form()).isEqualTo(Form.HELD);
        assertThat(verdict.reasons()).allMatch(Reason::onEdge).noneMatch(Reason::over);
    }

    @ParameterizedTest
    @CsvSource({
        "overFeetM.foreAftLowest, 0.30",
        "pelvicTiltDeg.change, 30",
        "spineFlexionDeg.change, -30",
    })
    void theOtherDirection_isNoFault(String measure, double value) {
        assertThat(judge.judge(new JudgedCase().with(measure, value).measures()).form())
                .isEqualTo(Form.HELD);
    }

    @Test
    void twoMeasuresOfOneQuestion_strainOnly() {
        FormVerdict verdict = judge.judge(new JudgedCase()
                .with("trunkLeanDeg.change", 9)
                .with("twistDeg.change", 20)
                .measures());

        assertThat(verdict.form()).isEqualTo(Form.STRAINED);
        assertThat(verdict.reasons())
                .extracting(Reason::measure)
                .containsExactly("twistDeg.change", "trunkLeanDeg.change");
    }

    @Test
    void twoQuestionsFailed_areLost() {
        FormVerdict verdict = judge.judge(new JudgedCase()
                .with("trunkLeanDeg.change", 9)
                .with("collapseDegPerS", 300)
                .measures());

        assertThat(verdict.form()).isEqualTo(Form.LOST);
    }

    @Test
    void withinOneSigmaOfALimit_theVerdictStandsAndTheReasonSaysSo() {
        JudgedCase edge = new JudgedCase();
        edge.sigma = 0.5;
        FormVerdict over = judge.judge(edge.with("trunkLeanDeg.change", 6.4).measures());
        FormVerdict under = judge.judge(edge.with("trunkLeanDeg.change", 5.6).measures());

        assertThat(over.form()).isEqualTo(Form.STRAINED);
        assertThat(over.reasons().get(0).onEdge()).isTrue();
        assertThat(over.reasons().get(0).text()).contains("on the edge");
        assertThat(under.form()).isEqualTo(Form.HELD);
        assertThat(under.reasons()).hasSize(1);
        assertThat(under.reasons().get(0).over()).isFalse();
        assertThat(under.reasons().get(0).text()).contains("on the edge");
    }

    @Test
    void stepsThatDoNotLeadBack_areNoFault() {
        JudgedCase forward = new JudgedCase();
        forward.direction = StepDirection.FORWARD;

        assertThat(judge.judge(forward.with("stepsAfter", 2).measures()).form()).isEqualTo(Form.HELD);
    }

    @Test
    void aMissingMeasure_isNotOverButSaysPartial() {
        JudgedCase missing = new JudgedCase();
        missing.overFeet = false;
        FormVerdict verdict = judge.judge(missing.measures());

        assertThat(verdict.form()).isEqualTo(Form.HELD);
        assertThat(verdict.partial()).isTrue();
    }

    @Test
    void withNothingMeasured_thereIsNoForm() {
        Measures nothing = new Measures(
                new Fall(null, null, null),
                new Impact(5, null, false, null, null, null),
                new Braking(null, null, null, null),
                new Posture(null, null, null, null, null, null, null),
                new Balance(null, null, null, null, null, null),
                new Sigma(0.003, null, null, null, 0.2, null, null, null));
        FormVerdict verdict = judge.judge(nothing);

        assertThat(verdict.form()).isNull();
        assertThat(verdict.partial()).isTrue();
        assertThat(verdict.reasons()).isEmpty();
    }

    @Test
    void theCoachsLimit_isTheOneThatCounts() {
        FormJudge strict = new FormJudge(FormStandard.of(Settings.starting(LimitSettings.LIST)
                .with(SettingText.read(LimitSettings.LIST, "limits.txt", "trunk-lean = 2\nsteps-back = 1"))));

        assertThat(strict.judge(new JudgedCase()
                                .with("trunkLeanDeg.change", 3)
                                .with("stepsAfter", 1)
                                .measures())
                        .reasons())
                .extracting(Reason::text)
                .containsExactly("trunk leaned right 3.0° (limit 2°, set by the coach)");
    }

    /** The table of the project's contract: what a coach starts from. */
    @ParameterizedTest
    @CsvSource({
        "BRAKING, 5.0", "ROTATION, 6", "OBLIQUITY, 5", "LEAN, 6", "TWIST, 8", "BESIDE_FEET, 0.06",
        "BEHIND_FEET, 0.10", "STEPS_BACK, 0", "TILT_BACK, 8", "SPINE, 20", "COLLAPSE, 200", "PEAK, 2"
    })
    void startingLimits_areThoseOfTheContract(Judged judged, double size) {
        assertThat(FormStandard.STARTING.settings().value(judged.setting())).isEqualTo(size);
    }
}
