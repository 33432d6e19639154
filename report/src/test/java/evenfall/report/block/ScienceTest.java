package evenfall.report.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.report.json.BlockDocument;
import evenfall.report.statistics.Interval;
import evenfall.report.statistics.IntraclassCorrelation;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a block says for scientists, against worked examples and blocks whose truth is known. */
class ScienceTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);

    /**
     * The typical error as a share of Hopkins 2000 (Sports Med 30:1): two days of eight people give 3.519735 % by a general-purpose
     * program. Here the same eight changes follow one another.
     */
    @Test
    void typicalErrorPercent_isThatOfHopkins() {
        double[] one = {5.1, 6.3, 4.8, 7.2, 5.9, 6.6, 5.4, 6.1};
        double[] two = {5.4, 6.0, 4.9, 7.6, 5.5, 6.9, 5.6, 6.0};
        StringBuilder table =
                new StringBuilder("date,landing,peakG\n").append(FIRST).append(",1,5.000000000000\n");
        double median = 5;
        for (int i = 0; i < one.length; i++) {
            median *= two[i] / one[i];
            table.append(String.format(Locale.ROOT, "%s,1,%.12f%n", FIRST.plusDays(i + 1), median));
        }

        assertThat(Science.of(course(table, "peakG")).typicalErrorPercent()).isCloseTo(3.519735, within(1e-6));
    }

    /** Standard deviation 1.2 and correlation 0.85: 0.464758, and 1.288243 for two, by a general-purpose program. */
    @Test
    void errorOfOneLanding_isWhatIsNotAlike() {
        double error = new IntraclassCorrelation(0.85, 1.2, new Interval(0, 1)).errorOfOne();

        assertThat(error).isCloseTo(0.464758, within(1e-6));
        assertThat(TrendAnalysis.MDC_FACTOR * error).isCloseTo(1.288243, within(1e-6));
    }

    /** Days scatter by 1 and landings by 2: one fifth alike, 2 for one landing, 5.5 for two; drawn anew 200 times. */
    @Test
    void landingsOfADay_areAsAlikeAsTheyWereMade() {
        SimulatedBlock simulated = new SimulatedBlock(4);
        double alike = 0;
        double error = 0;
        double repeatability = 0;
        int held = 0;
        for (int k = 0; k < 200; k++) {
            WithinDay day = Objects.requireNonNull(simulated.course().evidence().withinDay());
            alike += day.alike().value() / 200;
            error += day.error() / 200;
            repeatability += Objects.requireNonNull(day.repeatability()) / 200;
            held += day.alike().interval().low() <= 0.2
                            && day.alike().interval().high() >= 0.2
                    ? 1
                    : 0;
        }
        assertThat(alike).isCloseTo(0.2, within(0.03));
        assertThat(error).isCloseTo(2, within(0.06));
        assertThat(repeatability).isCloseTo(2 * Math.sqrt(2) * 2, within(0.2));
        assertThat(held).isBetween(180, 198);
    }

    /** Flat for six weeks, then up by 2 a week with scatter of 0.5: the day is found to a week in the median. */
    @Test
    void aChangeThatBeganOnADay_isDatedToIt() {
        SplittableRandom random = new SplittableRandom(9);
        double[] off = new double[60];
        for (int k = 0; k < off.length; k++) {
            StringBuilder table = new StringBuilder("date,landing,peakG\n");
            for (int week = 0; week < 12; week++) {
                double value = 20 + Math.max(0, 2 * (week - 6)) + 0.5 * normal(random);
                table.append(String.format(Locale.ROOT, "%s,1,%.6f%n", FIRST.plusWeeks(week), value));
            }
            Science science = Science.of(course(table, "peakG"));
            off[k] = Math.abs(FIRST.plusWeeks(6).toEpochDay()
                    - Objects.requireNonNull(science.bendDay()).toEpochDay());
            assertThat(Objects.requireNonNull(science.bend()).chance()).isLessThan(0.01);
            assertThat(Objects.requireNonNull(science.kendall()).chance()).isLessThan(0.05);
        }
        Arrays.sort(off);
        assertThat(off[30]).isLessThan(7);
    }

    /** Left by 3 more each day: no day speaks against it, so 2 of the 2⁶ ways to turn six signs lie as far. */
    @Test
    void sides_haveSecondOpinions() {
        StringBuilder table = new StringBuilder("date,landing,side,peakG\n");
        double[] scatter = {0.1, -0.2, 0.15, -0.1, 0.05, -0.15};
        for (int day = 0; day < 6; day++) {
            table.append(String.format(Locale.ROOT, "%s,1,left,%.3f%n", FIRST.plusDays(day), 8 + scatter[day]));
            table.append(String.format(Locale.ROOT, "%s,2,right,%.3f%n", FIRST.plusDays(day), 5 - scatter[day]));
        }
        Science.Feet feet =
                Objects.requireNonNull(Science.of(course(table, "peakG")).feet());

        assertThat(feet.sessions()).isEqualTo(6);
        assertThat(feet.signFlipChance()).isEqualTo(2.0 / 64);
        assertThat(feet.middle()).isCloseTo(3, within(0.1));
        assertThat(Objects.requireNonNull(feet.bootstrap()).bca().low()).isBetween(2.6, 3.0);
        assertThat(feet.symmetryAnglePercent())
                .isCloseTo(100 * (45 - Math.toDegrees(Math.atan(4.975 / 7.975))) / 90, within(0.3));
        assertThat(Science.of(course(
                                new StringBuilder(table.toString().replace("peakG", "pelvicTiltDeg.change")),
                                "pelvicTiltDeg.change"))
                        .feet())
                .extracting(Science.Feet::symmetryAnglePercent)
                .isNull();
    }

    /** As many sessions as are said to be needed find the difference about four times in five. */
    @Test
    void aStatedDifference_needsAsManySessionsAsFindIt() {
        SimulatedBlock simulated = new SimulatedBlock(6);
        simulated.sideScatter = 1;
        simulated.sessions = 12;
        double need = 0;
        double feet = 0;
        for (int k = 0; k < 40; k++) {
            Needed needed = needed(simulated.make(), 1.2);
            need += Objects.requireNonNull(needed.sessions()).need() / 40.0;
            feet += Objects.requireNonNull(needed.feet()).need() / 40.0;
        }
        // Were days all the same: 2 (2.8 · 2 / 1.2)².
        assertThat(feet).isCloseTo(2 * Math.pow(2.8016 * 2 / 1.2, 2), within(5.0));
        SimulatedBlock enough = new SimulatedBlock(7);
        enough.sideScatter = 1;
        enough.leftMinusRight = 1.2;
        enough.sessions = (int) Math.round(need);
        int found = 0;
        for (int k = 0; k < 200; k++) {
            found += Objects.requireNonNull(enough.course().sides().interval()).low() > 0 ? 1 : 0;
        }
        assertThat(found / 200.0).isBetween(0.8 - 0.12, 0.8 + 0.12);
    }

    /** k sessions bring the smallest change down by the root of k: six bring 0.582726 to 0.237897 (Hopkins 2000). */
    @Test
    void stretches_bringTheSmallestChangeDownByTheRootOfTheirSessions() {
        double[] medians = {5, 5.3, 5.0, 5.1, 5.5, 5.1, 5.4, 5.6, 5.5};
        StringBuilder table = new StringBuilder("date,landing,spineFlexionDeg.change\n");
        for (int s = 0; s < medians.length; s++) {
            table.append(String.format(Locale.ROOT, "%s,1,%.1f%n", FIRST.plusDays(s), medians[s]));
        }
        Block block = block(table.toString());

        assertThat(Needed.of(block, "spineFlexionDeg.change", 0.2379).stretch()).isEqualTo(6);
        assertThat(Needed.of(block, "spineFlexionDeg.change", 0.2378).stretch()).isEqualTo(7);
        assertThat(Needed.of(block, "peakG", 1).why()).contains("No landing");
    }

    /** Measured 5 cm more than noted, give or take 2 cm. */
    @Test
    void measuredHeights_areHeldAgainstNotedOnes() {
        SplittableRandom random = new SplittableRandom(1);
        StringBuilder table = new StringBuilder("date,landing,height_m,dropHeightM\n");
        for (int i = 0; i < 400; i++) {
            double height = 0.3 + 0.1 * random.nextInt(6);
            table.append(String.format(
                    Locale.ROOT,
                    "%s,%d,%.2f,%.6f%n",
                    FIRST.plusDays(i / 20),
                    i % 20 + 1,
                    height,
                    height + 0.05 + 0.02 * normal(random)));
        }
        HeightAgreement heights = Objects.requireNonNull(HeightAgreement.of(block(table.toString())));

        assertThat(heights.agreement().mean()).isCloseTo(0.05, within(0.003));
        assertThat(heights.agreement().limits().high()).isCloseTo(0.05 + 1.96 * 0.02, within(0.005));
        // 0.1707² between heights; 0.02² and, where it matters, 0.05² / 2 speak against.
        double between = 0.01 * 35 / 12;
        assertThat(Objects.requireNonNull(heights.consistent()).value())
                .isCloseTo((between + 0.0002 - 0.0002) / (between + 0.0002), within(0.01));
        assertThat(Objects.requireNonNull(heights.absolute()).value())
                .isCloseTo(between / (between + 0.0002 + 0.00125), within(0.01));
    }

    @Test
    void theDocument_hasItAll_andNeverNotANumber() {
        SimulatedBlock simulated = new SimulatedBlock(3);
        Block block = simulated.make();
        String text = BlockDocument.of(block, null, List.of(needed(block, 0.5)));
        JsonNode root = JsonMapper.builder().build().readTree(text);
        JsonNode science = root.path("measures").path(SimulatedBlock.MEASURE).path("science");

        assertThat(science.propertyNames())
                .containsExactly("atEqualHeight", "typicalErrorPercent", "withinDay", "kendall", "bend", "sides");
        assertThat(science.path("withinDay").propertyNames())
                .contains("icc", "landingsADay", "iccOfDay", "standardError", "mdc95", "repeatability");
        assertThat(science.path("bend").propertyNames()).contains("date", "perWeekBefore", "perWeekAfter", "chance");
        assertThat(science.path("sides").propertyNames())
                .contains("leftLessRight", "signFlipChance", "hodgesLehmann", "bootstrap", "bca");
        assertThat(root.path("needed").path(0).path("landingsPerSide").propertyNames())
                .containsExactly("have", "need", "more");
        assertThat(root.path("needed").path(0).path("sessionsPerStretch").asInt())
                .isPositive();
        assertThat(text).doesNotContain("NaN").doesNotContain("Infinity");
    }

    private static Needed needed(Block block, double difference) {
        return Needed.of(block, SimulatedBlock.MEASURE, difference);
    }

    private static MeasureCourse course(StringBuilder table, String measure) {
        return Objects.requireNonNull(block(table.toString()).measures().get(measure));
    }

    private static Block block(String table) {
        return BlockAnalysis.of(null, List.of(), TidyTable.read("table.csv", table), Map.of());
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
