package evenfall.report.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.landing.Side;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.report.json.BlockDocument;
import evenfall.report.log.SessionDate;
import evenfall.report.measure.Turning;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class BlockAnalysisTest {

    @Test
    void aTidyTable_isCountedBySession() {
        Block block = block("""
                date,landing,side,leave_out,form,peakG,pelvicRotationDeg.change,other
                2026-03-02,1,left,,held,5.0,-3,x
                2026-03-02,2,right,no,held,6.0,-4,x
                2026-03-02,3,both,slipped,lost,99,40,x
                2026-03-02,4,both,0,lost,7.0,,x
                2026-03-09,1,,false,,8.0,1,x
                """);

        assertThat(block.sessions()).extracting(BlockSession::landings).containsExactly(3, 1);
        BlockSession first = block.sessions().get(0);
        assertThat(List.of(first.left(), first.right(), first.both())).containsExactly(1, 1, 1);
        MeasureCourse peak = Objects.requireNonNull(block.measures().get("peakG"));
        assertThat(peak.unit()).isEqualTo("g");
        assertThat(peak.sessions()).extracting(SessionMedian::median).containsExactly(6.0, 8.0);
        assertThat(peak.trend().verdict()).isEqualTo("too few");
        assertThat(peak.sides().verdict()).isEqualTo("too few");
        assertThat(peak.bothFeet()).isNull();
        MeasureCourse rotation = Objects.requireNonNull(block.measures().get("pelvicRotationDeg.change"));
        assertThat(rotation.sessions()).extracting(SessionMedian::n).containsExactly(2, 1);
        assertThat(Objects.requireNonNull(rotation.bothFeet()).verdict()).isEqualTo("too few");
        assertThat(block.measures()).doesNotContainKey("other");
    }

    /** The contract's turning: rotation, twist and shifts flip on the right foot, lean and obliquity on the left. */
    @ParameterizedTest
    @CsvSource({
        "pelvicRotationDeg.change, 2, -2",
        "twistDeg.change, 2, -2",
        "lateralShiftM, 2, -2",
        "overFeetM.lateralLowest, 2, -2",
        "overFeetM.foreAftLowest, 2, 2",
        "pelvicObliquityDeg.change, -2, 2",
        "trunkLeanDeg.change, -2, 2",
        "trunkFlexionDeg.change, 2, 2",
        "peakG, 2, 2",
    })
    void measuresThatHaveASide_areTurnedToTheLandingFoot(String measure, double left, double right) {
        assertThat(Turning.of(measure).turned(2, Side.LEFT)).isEqualTo(left);
        assertThat(Turning.of(measure).turned(2, Side.RIGHT)).isEqualTo(right);
    }

    @Test
    void aSteadyRise_isCalledRising_andScatterIsNot() {
        StringBuilder rise = new StringBuilder("date,landing,peakG\n");
        StringBuilder flat = new StringBuilder("date,landing,peakG\n");
        SessionDate start = SessionDate.parse("2026-03-02").orElseThrow();
        double[] scatter = {0.1, -0.2, 0.15, -0.1, 0.05, -0.15, 0.2, -0.05};
        for (int week = 0; week < 8; week++) {
            String date = start.day().plusWeeks(week).toString();
            rise.append(date)
                    .append(",1,")
                    .append(5 + 0.5 * week + scatter[week])
                    .append('\n');
            flat.append(date).append(",1,").append(5 + scatter[week]).append('\n');
        }
        Trend rising = Objects.requireNonNull(block(rise.toString()).measures().get("peakG"))
                .trend();
        Trend steady = Objects.requireNonNull(block(flat.toString()).measures().get("peakG"))
                .trend();

        assertThat(rising.verdict()).isEqualTo("rising");
        assertThat(Objects.requireNonNull(rising.perWeek())).isCloseTo(0.5, within(0.05));
        assertThat(steady.verdict()).isEqualTo("no clear change");
    }

    /** Each day one box, a little higher every week: what the box does and what the weeks do cannot be told apart. */
    @Test
    void boxesThatRiseEveryDay_areNoChangeOfThePerson() {
        StringBuilder table = new StringBuilder("date,landing,height_m,peakG\n");
        for (int week = 0; week < 6; week++) {
            for (int landing = 1; landing < 4; landing++) {
                table.append(
                        "2026-03-0%d,%d,0.%d,%.1f%n".formatted(week + 1, landing, week + 3, 5 + week + 0.1 * landing));
            }
        }
        MeasureCourse peak =
                Objects.requireNonNull(block(table.toString()).measures().get("peakG"));

        assertThat(peak.trend().verdict()).isEqualTo("no clear change");
        assertThat(peak.sessions()).extracting(SessionMedian::median).startsWith(5.2, 6.2);
    }

    /** The same force from the same box all along, and a higher box each week: no change. */
    @Test
    void boxesThatRise_withLandingsFromSeveralEachDay_areNoChange() {
        StringBuilder table = new StringBuilder("date,landing,height_m,peakG\n");
        double[] scatter = {0.1, -0.2, 0.15, -0.1, 0.05, -0.15, 0.2, -0.05};
        for (int week = 0; week < 8; week++) {
            for (int landing = 0; landing < 6; landing++) {
                double height = 0.3 + 0.05 * week + 0.1 * (landing % 3);
                double peak = 2 + 5 * Math.sqrt(height) + scatter[week] + 0.05 * scatter[landing];
                table.append("2026-03-%02d,%d,%.2f,%.3f%n".formatted(3 * week + 1, landing + 1, height, peak));
            }
        }
        MeasureCourse peak =
                Objects.requireNonNull(block(table.toString()).measures().get("peakG"));

        assertThat(peak.trend().verdict()).isEqualTo("no clear change");
        assertThat(Objects.requireNonNull(peak.trend().perWeek())).isCloseTo(0, within(0.06));
        assertThat(peak.sessions().get(7).median() - peak.sessions().get(0).median())
                .isGreaterThan(1);
    }

    /** Fields of the project's contract. */
    @Test
    void theDocument_hasTheFieldsOfTheContract() {
        String text = BlockDocument.of(block("""
                date,landing,side,form,dropHeightM,trunkLeanDeg.change
                2026-03-02,1,left,held,0.5,2
                """));
        JsonNode root = JsonMapper.builder().build().readTree(text);

        assertThat(root.propertyNames()).contains("athlete", "sessions", "measures", "formHeight");
        assertThat(root.path("sessions").path(0).propertyNames())
                .contains("date", "landings", "left", "right", "both", "effortMinutes");
        JsonNode lean = root.path("measures").path("trunkLeanDeg.change");
        assertThat(lean.propertyNames())
                .contains("unit", "sessions", "typicalError", "mdc95", "trend", "sides", "bothFeet", "chanceAmongAll");
        assertThat(lean.path("trend").propertyNames()).contains("perWeek", "low", "high", "verdict", "method");
        assertThat(lean.path("sides").propertyNames())
                .contains(
                        "left",
                        "right",
                        "difference",
                        "low",
                        "high",
                        "symmetryIndexPercent",
                        "verdict",
                        "neededPerSide",
                        "method");
        assertThat(lean.path("sides").path("left").path("median").asDouble()).isEqualTo(-2);
        assertThat(root.path("formHeight").propertyNames())
                .contains("heightM", "low", "high", "n", "method", "why", "trend", "sessions");
        assertThat(root.path("formHeight").path("heightM").isNull()).isTrue();
        assertThat(root.path("formHeight").path("why").asString()).isNotEmpty();
        assertThat(root.path("formHeight").path("n").asInt()).isEqualTo(1);
    }

    @Test
    void anEmptyBlock_isABlockAllTheSame() {
        Block block = BlockAnalysis.of("invented", List.of(), List.of(), Map.of());

        assertThat(block.sessions()).isEmpty();
        assertThat(BlockDocument.of(block)).contains("\"sessions\" : [ ]");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "date,peakG;2026-02-30,5 | line 2",
                "date,peakG;2026-02-20,5;2026-02-21,much | 'much' in column 'peakG'",
                "date,side,peakG;2026-02-20,middle,5 | left, right or both",
                "date,form,peakG;2026-02-20,good,5 | held, strained or lost",
                "day,peakG;2026-02-20,5 | no column 'date'",
            })
    void aTableThatCannotBeUnderstood_isRefusedWithItsLine(String table, String words) {
        assertThatThrownBy(() -> TidyTable.read("table.csv", table.replace(';', '\n')))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageContaining(words);
    }

    /** Fewer than half cut off leave a median as it is; more make it "at least". */
    @Test
    void peaksCutOff_areAtLeast() {
        StringBuilder table = new StringBuilder("date,landing,peakG,clipped\n");
        for (int day = 2; day <= 6; day++) {
            for (int i = 1; i <= 7; i++) {
                boolean cut = i > (day == 4 ? 2 : 5);
                table.append(
                        String.format(Locale.ROOT, "2026-03-%02d,%d,%.1f,%b%n", day, i, cut ? 8.0 : 5 + 0.1 * i, cut));
            }
        }
        MeasureCourse peak =
                Objects.requireNonNull(block(table.toString()).measures().get("peakG"));

        assertThat(peak.sessions())
                .extracting(SessionMedian::atLeast)
                .containsExactly(false, false, true, false, false);
        assertThat(peak.sessions().get(0).median()).isEqualTo(5.4);
        assertThat(peak.trend().verdict()).isEqualTo(Trend.NO_CLEAR_CHANGE);
        assertThat(peak.trend().why()).contains("cut off at full scale");
    }

    /**
     * Typical error and smallest change after Hopkins 2000 (Sports Med 30:1): differences 0.3 -0.3 0.1 0.4 -0.4 0.3 0.2 -0.1 have
     * the standard deviation 0.297309, so 0.210229 and 0.582726.
     */
    @Test
    void typicalErrorAndSmallestChange_areThoseOfHopkins() {
        double[] medians = {5, 5.3, 5.0, 5.1, 5.5, 5.1, 5.4, 5.6, 5.5};
        StringBuilder table = new StringBuilder("date,landing,spineFlexionDeg.change\n");
        for (int s = 0; s < medians.length; s++) {
            table.append(String.format(Locale.ROOT, "2026-03-%02d,1,%.1f%n", s + 2, medians[s]));
        }
        MeasureCourse spine =
                Objects.requireNonNull(block(table.toString()).measures().get("spineFlexionDeg.change"));

        assertThat(spine.typicalError()).isCloseTo(0.210229, within(1e-6));
        assertThat(spine.mdc95()).isCloseTo(0.582726, within(1e-6));
    }

    /**
     * Robinson, Herzog and Nigg 1987 (JMPT 10:172), with left as the positive side: right 5.2 and left 4.8 are -8 %, 6 and 3 are
     * -66.6667 %. Near zero the index runs away (0.5 and -0.4: 1800 % for 0.9 degrees), so quantities with a sign have none.
     */
    @ParameterizedTest
    @CsvSource({"peakG, 5.2, 4.8, -8.0", "peakG, 6, 3, -66.666667", "pelvicTiltDeg.change, 0.5, -0.4,", "peakG, 5, 5, 0"
    })
    void symmetryIndex_isOfStrictlyPositiveQuantitiesOnly(
            String measure, double right, double left, @Nullable Double percent) {
        StringBuilder table = new StringBuilder("date,landing,side," + measure + "\n");
        for (int day = 2; day <= 5; day++) {
            table.append(String.format(
                    Locale.ROOT, "2026-03-%02d,1,left,%s%n2026-03-%02d,2,right,%s%n", day, left, day, right));
        }
        Double index = Objects.requireNonNull(block(table.toString()).measures().get(measure))
                .sides()
                .symmetryIndexPercent();

        if (percent == null) {
            assertThat(index).isNull();
        } else {
            assertThat(index).isCloseTo(percent, within(1e-6));
        }
    }

    private static Block block(String table) {
        return BlockAnalysis.of(null, List.of(), TidyTable.read("table.csv", table), Map.of());
    }
}
