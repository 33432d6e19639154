package evenfall.report.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.landing.Side;
import evenfall.report.block.Block;
import evenfall.report.block.BlockAnalysis;
import evenfall.report.block.BlockLanding;
import evenfall.report.form.Form;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.assertj.core.api.Assertions;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class WeeksTest {

    /** A Monday. */
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

    private static final long SEED = 21;

    private final List<BlockLanding> landings = new ArrayList<>();
    private final Map<SessionDate, Double> efforts = new HashMap<>();
    private final SortedMap<LocalDate, List<DiaryEntry>> diary = new TreeMap<>();

    /** The lady tasting tea: three of four right by chance or more, 17 of 70 (Fisher 1935, chapter II). */
    @Test
    void theExactTest_agreesWithItsWorkedExample() {
        assertThat(FisherExact.atLeast(3, 4, 1, 4)).isCloseTo(17 / 70.0, within());
        assertThat(FisherExact.atLeast(4, 4, 0, 4)).isCloseTo(1 / 70.0, within());
        assertThat(FisherExact.atLeast(0, 4, 3, 4)).isCloseTo(1, within());
    }

    @Test
    void weeks_areSummed_andMissingOnesAreThere() {
        session(0, 3, 0.5, 420.0);
        session(3, 2, 0.5, null);
        session(15, 4, 0.7, 100.0);
        List<WeekCount> weeks = weeks().weeks();

        assertThat(weeks)
                .containsExactly(
                        new WeekCount(MONDAY, 2, 5, 420.0, null, null),
                        new WeekCount(MONDAY.plusWeeks(1), 0, 0, null, -5, null),
                        new WeekCount(MONDAY.plusWeeks(2), 1, 4, 100.0, 4, null));
        assertThat(weeks().heights())
                .containsExactly(new HeightCount(0.7, 0, 0, 4, 0, 4), new HeightCount(0.5, 0, 0, 5, 0, 5));
    }

    /**
     * Effort times minutes after Foster et al. 2001 (6 for 75 minutes are 450), monotony and strain of a week of them, and averages
     * that forget after Williams et al. 2017: worked values of a general-purpose program.
     */
    @Test
    void loadsOfDays_areThoseOfTheWorkedExamples() {
        double[][] efforts = {{5, 60}, {}, {6, 75}, {4, 50}, {}, {10, 50}, {7, 50}, {}, {8, 50}, {5, 50}};
        for (int day = 0; day < efforts.length; day++) {
            if (efforts[day].length > 0) {
                add(day, effort(efforts[day][0], efforts[day][1]));
            }
        }
        session(0, 3, 0.5, null);
        session(9, 3, 0.5, null);
        Weeks weeks = weeks();
        WeekLoad first = weeks.loads().get(0);
        WeekLoad second = weeks.loads().get(1);

        assertThat(weeks.days().get(1).effortMinutes()).isEqualTo(450);
        assertThat(weeks.weeks().get(0).effortMinutes()).isEqualTo(1800);
        assertThat(first.monotony()).isCloseTo(1.280013, about());
        assertThat(first.strain()).isCloseTo(2304.0228, Assertions.within(1e-4));
        assertThat(first.average7()).isCloseTo(291.3330, Assertions.within(1e-4));
        assertThat(second.monotony()).isNull();
        assertThat(second.average7()).isCloseTo(260.4061, Assertions.within(1e-4));
        assertThat(second.average28()).isCloseTo(273.8117, Assertions.within(1e-4));
    }

    /** A session whose effort nobody noted is no day of rest. */
    @Test
    void aSessionWithoutEffort_leavesItsWeekUnknown() {
        add(0, effort(5, 60));
        session(0, 3, 0.5, null);
        session(9, 3, 0.5, null);
        add(16, effort(5, 60));
        session(16, 3, 0.5, null);
        Weeks weeks = weeks();

        assertThat(weeks.loads().get(0).average7()).isCloseTo(300 * Math.pow(0.75, 6), within());
        assertThat(weeks.loads().get(1).monotony()).isNull();
        assertThat(weeks.loads().get(1).average7()).isNull();
        assertThat(weeks.loads().get(2).average28()).isNull();
    }

    @Test
    void aResultThatStandsStill_isAskedAbout_oneThatMovesIsNot() {
        session(0, 3, 0.5, null);
        for (int week = 0; week < 6; week++) {
            result(7 * week, "squats", week < 1 ? "9 reps" : "12 reps");
            result(7 * week, "reach", (30 + 2 * week) + " cm");
        }
        assertThat(weeks().questions()).hasSize(1);
        assertThat(weeks().questions().get(0))
                .contains("squats")
                .contains("12 reps")
                .contains("What might be changed?");

        result(42, "squats", "13 reps");
        assertThat(weeks().questions()).isEmpty();
    }

    @Test
    void soreness_afterLargerSessionsOnly_isAskedAbout_withBothCounts() {
        for (int i = 0; i < 12; i++) {
            session(4 * i, i % 2 == 0 ? 20 : 8, 0.5, null);
            soreness(4 * i + 2, "right-calf", i % 2 == 0 ? 5 : 0);
        }
        List<String> questions = weeks().questions();

        assertThat(questions).hasSize(1);
        assertThat(questions.get(0))
                .contains("right calf")
                .contains("6 times of 6")
                .contains("0 of 6")
                .endsWith("Is there something in it?")
                .doesNotContain("because");
    }

    /** Soreness that has nothing to do with the sessions is asked about in hardly more than one of twenty blocks. */
    @Test
    void sorenessByChance_isHardlyEverAskedAbout() {
        SplittableRandom random = new SplittableRandom(SEED);
        int asked = 0;
        int blocks = 400;
        for (int b = 0; b < blocks; b++) {
            landings.clear();
            diary.clear();
            for (int i = 0; i < 16; i++) {
                session(4 * i, 6 + random.nextInt(12), 0.3 + 0.15 * random.nextInt(5), null);
                soreness(4 * i + 1, "right calf", random.nextInt(7));
                soreness(4 * i + 1, "thighs", random.nextInt(7));
            }
            asked += weeks().questions().isEmpty() ? 0 : 1;
        }
        assertThat(asked / (double) blocks).as("seed %d", SEED).isLessThan(0.08);
    }

    @Test
    void cues_lastUntilTheNext_andCountTheirSessions() {
        for (int day : new int[] {0, 3, 7, 10}) {
            session(day, 3, 0.5, null);
            add(day, entry(Map.of(), Map.of(), day < 7 ? "quiet feet" : "ribs level"));
        }
        session(14, 3, 0.5, null);

        assertThat(weeks().cues())
                .containsExactly(
                        new CueSpan("quiet feet", MONDAY, MONDAY.plusDays(3), 2),
                        new CueSpan("ribs level", MONDAY.plusDays(7), MONDAY.plusDays(10), 3));
    }

    private Weeks weeks() {
        Block block = BlockAnalysis.withoutMeasures("a", List.of(), landings, efforts);
        return Weeks.of(block, diary, 4);
    }

    private void session(int day, int count, double height, @Nullable Double effort) {
        SessionDate date = new SessionDate(MONDAY.plusDays(day), 0);
        for (int i = 1; i <= count; i++) {
            landings.add(new BlockLanding(date, i, Side.BOTH, height, false, Form.HELD, Map.of()));
        }
        if (effort != null) {
            efforts.put(date, effort);
        }
    }

    private void soreness(int day, String region, int size) {
        add(day, entry(Map.of(region, size), Map.of(), null));
    }

    private void result(int day, String name, String value) {
        add(day, entry(Map.of(), Map.of(name, value), null));
    }

    private void add(int day, DiaryEntry entry) {
        diary.computeIfAbsent(MONDAY.plusDays(day), key -> new ArrayList<>()).add(entry);
    }

    private static DiaryEntry entry(Map<String, Integer> soreness, Map<String, String> results, @Nullable String cue) {
        return new DiaryEntry("then", soreness, Map.of(), List.of(), null, null, results, cue, null);
    }

    private static DiaryEntry effort(double effort, double minutes) {
        return new DiaryEntry("then", Map.of(), Map.of(), List.of(), effort, minutes, Map.of(), null, null);
    }

    private static Offset<Double> about() {
        return Assertions.within(1e-6);
    }

    private static Offset<Double> within() {
        return Assertions.within(1e-12);
    }
}
