package evenfall.report.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.report.setting.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ImpactForHeightTest {

    private final SplittableRandom random = new SplittableRandom(11);

    @Test
    void usual_isThePowerLawThePeaksWereMadeBy_thoughSomeAreWild() {
        List<ImpactForHeight.Impact> impacts = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            double height = 0.3 + 0.9 * random.nextDouble();
            double peak = 6 * Math.pow(height, 0.6) * Math.exp(0.1 * random.nextGaussian());
            impacts.add(impact(height, i % 20 == 0 ? 3 * peak : peak, false, null));
        }
        UsualImpact usual = usual(new ImpactForHeight(impacts), 0.8, null);

        assertThat(usual.peakG()).isCloseTo(6 * Math.pow(0.8, 0.6), within(0.2));
        assertThat(usual.spread()).isCloseTo(0.1, within(0.03));
        assertThat(usual.landings()).isEqualTo(200);
    }

    @Test
    void peaksCutOff_countAsAtLeast() {
        List<ImpactForHeight.Impact> impacts = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            double height = 0.3 + 0.9 * random.nextDouble();
            double peak = 6 * Math.pow(height, 0.6) * Math.exp(0.1 * random.nextGaussian());
            impacts.add(impact(height, Math.min(peak, 5.6), peak > 5.6, null));
        }
        // A third is cut off at 5.6 g; the usual peak from 1.0 m lies above that.
        assertThat(usual(new ImpactForHeight(impacts), 1.0, null).peakG()).isCloseTo(6, within(0.35));
    }

    @Test
    void fewerThanTwentyLikeIt_orHeightsNotTried_areNotTold() {
        ImpactForHeight impact = new ImpactForHeight(scattered(40, "mat"));

        assertThat(impact.usual(new Circumstance(null, 0.5, "Mat ", null))).isNotNull();
        assertThat(impact.usual(new Circumstance(null, 0.5, null, null))).isNotNull();
        assertThat(impact.usual(new Circumstance(null, 0.5, "concrete", null))).isNull();
        assertThat(impact.usual(new Circumstance(null, 2.0, "mat", null))).isNull();
        assertThat(impact.usual(new Circumstance(null, null, "mat", null))).isNull();
        assertThat(new ImpactForHeight(scattered(19, "mat")).usual(new Circumstance(null, 0.5, "mat", null)))
                .isNull();
    }

    @Test
    void twoSpreadsAboveUsual_isAFaultAndSaysWhatIsUsual() {
        FormJudge judge = judge(scattered(200, null));
        Circumstance half = new Circumstance(null, 0.5, null, null);
        double limit = 6 * Math.pow(0.5, 0.6) * Math.exp(0.2);

        FormVerdict hard =
                judge.judge(new JudgedCase().with("peakG", limit + 0.8).measures(), half);
        assertThat(hard.form()).isEqualTo(Form.STRAINED);
        assertThat(hard.reasons().get(0).text())
                .matches("peak \\d\\.\\d g \\(limit 4\\.\\d g, usual 4\\.0 g from 0\\.50 m\\)");
        assertThat(Objects.requireNonNull(hard.peak()).spreads()).isGreaterThan(2);
        assertThat(judge.judge(new JudgedCase().with("peakG", limit - 0.8).measures(), half)
                        .form())
                .isEqualTo(Form.HELD);
    }

    /** At least so hard and below the limit: nobody knows. At least so hard and above it: over. */
    @Test
    void peakCutOff_isUnknownBelowTheLimit_andOverAboveIt() {
        FormJudge judge = judge(scattered(200, null));
        Circumstance half = new Circumstance(null, 0.5, null, null);
        JudgedCase below = new JudgedCase().with("peakG", 3.5);
        below.clipped = true;
        JudgedCase above = new JudgedCase().with("peakG", 6);
        above.clipped = true;

        assertThat(judge.judge(below.measures(), half).partial()).isTrue();
        assertThat(judge.judge(below.measures(), half).form()).isEqualTo(Form.HELD);
        assertThat(judge.judge(above.measures(), half).form()).isEqualTo(Form.STRAINED);
        assertThat(judge.judge(above.measures(), half).reasons().get(0).text())
                .startsWith("peak at least 6.0 g (limit");
    }

    private FormJudge judge(List<ImpactForHeight.Impact> impacts) {
        return new FormJudge(
                new FormStandard(Settings.starting(LimitSettings.LIST), Baseline.NONE, new ImpactForHeight(impacts)));
    }

    private List<ImpactForHeight.Impact> scattered(int count, @Nullable String surface) {
        List<ImpactForHeight.Impact> impacts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double height = 0.3 + 0.9 * random.nextDouble();
            impacts.add(
                    impact(height, 6 * Math.pow(height, 0.6) * Math.exp(0.1 * random.nextGaussian()), false, surface));
        }
        return impacts;
    }

    private static ImpactForHeight.Impact impact(
            double height, double peak, boolean clipped, @Nullable String surface) {
        return new ImpactForHeight.Impact(new Circumstance(null, height, surface, null), peak, clipped);
    }

    private static UsualImpact usual(ImpactForHeight impact, double height, @Nullable String surface) {
        return Objects.requireNonNull(impact.usual(new Circumstance(null, height, surface, null)));
    }
}
