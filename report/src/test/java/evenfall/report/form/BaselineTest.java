package evenfall.report.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import evenfall.report.setting.SettingText;
import evenfall.report.setting.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BaselineTest {

    private static final Circumstance TWO_FEET = new Circumstance(Side.BOTH, 0.3, null, null);

    @Test
    void medianAndSpread_areThoseOfTheApprovedLandings() {
        OwnUsual lean = usual(Judged.LEAN, twoFeet(21, 3, "trunkLeanDeg.change", 4, 3));

        // Evenly from 1 to 7: median 4, median distance from it 1.5; times 1.4826 (Hampel 1974, JASA 69:383).
        assertThat(lean.median()).isCloseTo(4, within(1e-9));
        assertThat(lean.spread()).isCloseTo(1.5 * 1.4826, within(1e-9));
        assertThat(lean.landings()).isEqualTo(21);
        assertThat(lean.sessions()).isEqualTo(3);
    }

    @Test
    void spread_isNoLessThanTheLeastNorThanTheMeasurementsError() {
        assertThat(usual(Judged.LEAN, twoFeet(21, 3, "trunkLeanDeg.change", 4, 0))
                        .spread())
                .isEqualTo(1.0);
        List<Baseline.Approved> unsure = new ArrayList<>();
        for (int i = 0; i < 21; i++) {
            JudgedCase landing = new JudgedCase().with("trunkLeanDeg.change", 4);
            landing.sigma = 1.7;
            unsure.add(new Baseline.Approved("s" + i % 3, landing.measures(), TWO_FEET));
        }
        assertThat(usual(Judged.LEAN, unsure).spread()).isEqualTo(1.7);
    }

    @Test
    void tooFewLandingsOrSessions_areNoBaseline() {
        assertThat(Baseline.of(twoFeet(19, 3, "trunkLeanDeg.change", 4, 1)).stands())
                .isFalse();
        assertThat(Baseline.of(twoFeet(40, 2, "trunkLeanDeg.change", 4, 1)).stands())
                .isFalse();
        assertThat(Baseline.of(twoFeet(20, 3, "trunkLeanDeg.change", 4, 1)).stands())
                .isTrue();
    }

    @Test
    void landingsOnOneFoot_areTurnedToIt_andTwoFootedOnesStandApart() {
        List<Baseline.Approved> oneFoot = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            Side foot = i % 2 == 0 ? Side.LEFT : Side.RIGHT;
            // Lean is stored right positive: 3 degrees towards the landing foot each time.
            double lean = foot == Side.RIGHT ? 3 : -3;
            oneFoot.add(new Baseline.Approved(
                    "s" + i % 3,
                    new JudgedCase().with("trunkLeanDeg.change", lean).measures(),
                    new Circumstance(foot, 0.3, null, null)));
        }
        Baseline baseline = Baseline.of(oneFoot);

        assertThat(Objects.requireNonNull(baseline.usual(Judged.LEAN, Footing.ONE_FOOT))
                        .median())
                .isEqualTo(3);
        assertThat(baseline.usual(Judged.LEAN, Footing.BOTH_FEET)).isNull();
        FormJudge judge = judge(baseline, "");
        // Own limit: 3 and three spreads of 1 towards the foot, three spreads from level away from it.
        assertThat(text(judge, "trunkLeanDeg.change", -6.5, Side.LEFT))
                .isEqualTo("trunk leaned left 6.5° (own limit 6°, baseline 3.0° to the left, limit to start from 6°)");
        assertThat(text(judge, "trunkLeanDeg.change", 3.5, Side.LEFT))
                .startsWith("trunk leaned right 3.5° (own limit 3°, baseline 3.0° to the left");
        assertThat(text(judge, "trunkLeanDeg.change", 5.9, Side.RIGHT)).isEmpty();
        // Two-footed landings have no baseline here: where a coach starts.
        assertThat(text(judge, "trunkLeanDeg.change", 5.9, Side.BOTH)).isEmpty();
        assertThat(text(judge, "trunkLeanDeg.change", 6.5, Side.BOTH)).contains("(limit 6°)");
    }

    @Test
    void nearerToLevelThanUsual_isNeverAFault() {
        FormJudge judge = judge(Baseline.of(twoFeet(21, 3, "trunkLeanDeg.change", 6, 0)), "");

        assertThat(text(judge, "trunkLeanDeg.change", 0, Side.BOTH)).isEmpty();
        assertThat(text(judge, "trunkLeanDeg.change", -2.5, Side.BOTH)).isEmpty();
        assertThat(text(judge, "trunkLeanDeg.change", -3.5, Side.BOTH)).contains("own limit 3°");
    }

    @Test
    void faultOfLongStanding_holdsButIsSaid_andNeverBeyondTheMostTheCoachAllows() {
        Baseline baseline = Baseline.of(twoFeet(21, 3, "trunkLeanDeg.change", 5, 0));
        FormJudge judge = judge(baseline, "");
        Measures usual = new JudgedCase().with("trunkLeanDeg.change", 7).measures();
        FormVerdict verdict = judge.judge(usual, TWO_FEET);

        assertThat(verdict.form()).isEqualTo(Form.HELD);
        assertThat(verdict.reasons().get(0).over()).isFalse();
        assertThat(verdict.reasons().get(0).text())
                .isEqualTo(
                        "trunk leaned right 7.0° (within the own limit by the baseline, 8°, but past 6°, the limit to start"
                                + " from)");
        assertThat(StandardWords.of(judge.standard()))
                .contains("Trunk lean on two feet: up to 8.0° to the right and 3.0° to the left (baseline 5.0° to the"
                        + " right), which lets more pass than the 6° a coach starts from.");

        FormJudge very = judge(Baseline.of(twoFeet(21, 3, "trunkLeanDeg.change", 12, 0)), "");
        assertThat(text(very, "trunkLeanDeg.change", 9.5, Side.BOTH)).contains("own limit 9°");
        assertThat(judge(baseline, "own-at-most = 1").judge(usual, TWO_FEET).form())
                .isEqualTo(Form.STRAINED);
    }

    @Test
    void theCoachsLimit_goesBeforeTheAthletesOwn() {
        FormJudge judge = judge(Baseline.of(twoFeet(21, 3, "trunkLeanDeg.change", 1, 0)), "trunk-lean = 7");

        assertThat(text(judge, "trunkLeanDeg.change", 6.9, Side.BOTH)).isEmpty();
        assertThat(text(judge, "trunkLeanDeg.change", 7.1, Side.BOTH)).contains("limit 7°, set by the coach");
    }

    /** What is usual from low boxes says nothing of how hard a high one is stopped: 1 + height / depth. */
    @Test
    void meanBraking_hasNoLimitOfTheAthletesOwn() {
        FormJudge judge = judge(Baseline.of(twoFeet(21, 3, "meanBrakingG", 2, 0)), "");

        assertThat(text(judge, "meanBrakingG", 4.9, Side.BOTH)).isEmpty();
    }

    /**
     * Of further landings like those of the baseline, own limits three spreads away must call few a fault in a measure: one in
     * 370 lies beyond three standard deviations of a normal distribution, and more do where these are taken from twenty.
     */
    @Test
    void landingsLikeTheBaseline_areRarelyCalledAFault() {
        SplittableRandom random = new SplittableRandom(7);
        int beyond = 0;
        int asked = 0;
        for (int athlete = 0; athlete < 300; athlete++) {
            List<Baseline.Approved> approved = new ArrayList<>();
            for (int i = 0; i < 24; i++) {
                approved.add(new Baseline.Approved("s" + i % 3, leaning(1 + 2 * random.nextGaussian()), TWO_FEET));
            }
            FormJudge judge = judge(Baseline.of(approved), "own-at-most = 10");
            for (int i = 0; i < 50; i++) {
                asked++;
                beyond += text(judge, "trunkLeanDeg.change", 1 + 2 * random.nextGaussian(), Side.BOTH)
                                .contains("own limit")
                        ? 1
                        : 0;
            }
        }
        assertThat((double) beyond / asked).isLessThan(0.02);
    }

    private static OwnUsual usual(Judged judged, List<Baseline.Approved> landings) {
        return Objects.requireNonNull(Baseline.of(landings).usual(judged, Footing.BOTH_FEET));
    }

    /** Two-footed landings evenly spread about a middle. */
    private static List<Baseline.Approved> twoFeet(
            int landings, int sessions, String measure, double middle, double reach) {
        List<Baseline.Approved> list = new ArrayList<>();
        for (int i = 0; i < landings; i++) {
            double value = middle + reach * (2.0 * i / (landings - 1) - 1);
            list.add(new Baseline.Approved(
                    "s" + i % sessions, new JudgedCase().with(measure, value).measures(), TWO_FEET));
        }
        return list;
    }

    private static Measures leaning(double lean) {
        return new JudgedCase().with("trunkLeanDeg.change", lean).measures();
    }

    private static FormJudge judge(Baseline baseline, String limits) {
        Settings settings =
                Settings.starting(LimitSettings.LIST).with(SettingText.read(LimitSettings.LIST, "limits.txt", limits));
        return new FormJudge(new FormStandard(settings, baseline, null));
    }

    /** What is said of a landing that is as usual but for one measure; empty where nothing is. */
    private static String text(FormJudge judge, String measure, double value, @Nullable Side side) {
        List<Reason> reasons = judge.judge(
                        new JudgedCase().with(measure, value).measures(), new Circumstance(side, 0.3, null, null))
                .reasons();
        return reasons.stream()
                .filter(reason -> reason.measure().equals(measure))
                .map(Reason::text)
                .findFirst()
                .orElse("");
    }
}
