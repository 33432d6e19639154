package evenfall.report.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.landing.Side;
import evenfall.report.block.Block;
import evenfall.report.block.BlockAnalysis;
import evenfall.report.block.BlockLanding;
import evenfall.report.form.Form;
import evenfall.report.heed.Standing;
import evenfall.report.json.BlockDocument;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.setting.SettingText;
import evenfall.report.setting.Settings;
import evenfall.report.table.BlockText;
import evenfall.report.weeks.Weeks;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class NextSessionTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
    private static final long SEED = 31;
    private static final int LAST_DAY = 28;
    private static final List<Form> FORMS = List.of(Form.HELD, Form.STRAINED, Form.LOST);

    private final List<BlockLanding> landings = new ArrayList<>();
    private final SortedMap<LocalDate, List<DiaryEntry>> diary = new TreeMap<>();

    @Test
    void allWell_pointsToTheSamePlan_andNamesOneSmallStepWithinTheInterval() {
        fillWell();
        NextSession next = next(Rules.STARTING);

        assertThat(next.argued()).isEqualTo(Choice.SAME_PLAN);
        assertThat(next.noHigherBox()).isEmpty();
        assertThat(next.higherBoxM())
                .isNotNull()
                .isLessThanOrEqualTo(0.5 + 0.1 + 1e-9)
                .isGreaterThan(0.5);
        assertThat(next.options()).extracting(Option::choice).containsExactly(Choice.values());
    }

    @Test
    void openPain_stopsBeforeEverythingElse() {
        fillWell();
        add(LAST_DAY + 1, entry(Map.of(), Map.of("left knee", 1), List.of()));
        NextSession next = next(Rules.STARTING);

        assertThat(next.argued()).isEqualTo(Choice.STOP);
        assertThat(next.arguedOption().reasonsFor().get(0)).contains("left knee");
        assertThat(next.higherBoxM()).isNull();
    }

    @Test
    void twoLostInARow_sayGoLower() {
        fillWell();
        lastSession(0.5, Form.LOST, Form.LOST);
        NextSession next = next(Rules.STARTING);

        assertThat(next.argued()).isEqualTo(Choice.GO_LOWER);
        assertThat(next.arguedOption().reasonsFor().get(0)).contains("2 landings in a row");
        assertThat(next.arguedOption().words()).contains("below 0.5 m");
    }

    /** The height to go down to is told with what was counted there, not with a word for it. */
    @Test
    void goingLower_namesTheHeightByWhatWasHeldThere() {
        fillWell();
        lastSession(0.6, Form.LOST, Form.HELD, Form.STRAINED, Form.STRAINED);
        for (int i = 0; i < 4; i++) {
            landing(LAST_DAY, 0.5, Form.HELD);
        }
        NextSession next = next(Rules.STARTING);

        assertThat(next.argued()).isEqualTo(Choice.GO_LOWER);
        assertThat(next.arguedOption().words())
                .isEqualTo("go lower: up to 0.5 m, where form was held in 4 of 4 in the last session");
        assertThat(next.arguedOption().reasonsFor())
                .contains("From 0.6 m form was held in 1 of 4 landings of the last session, from 0.5 m in 4 of 4.");
    }

    @Test
    void twoLostWithOneHeldBetween_areNoRun() {
        fillWell();
        lastSession(0.5, Form.LOST, Form.HELD, Form.LOST, Form.HELD, Form.HELD, Form.HELD, Form.HELD, Form.HELD);

        assertThat(next(Rules.STARTING).argued()).isNotEqualTo(Choice.GO_LOWER);
    }

    @Test
    void whatWasNotAsked_isNoGoodNews() {
        fillWell();
        diary.clear();
        NextSession next = next(Rules.STARTING);

        assertThat(next.argued()).isEqualTo(Choice.STAY);
        assertThat(next.higherBoxM()).isNull();
        assertThat(next.noHigherBox()).hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void theCoachsRules_areHeeded_andShown() {
        fillWell();
        Rules careful = new Rules(
                Settings.starting(RuleSettings.LIST)
                        .with(SettingText.read(
                                RuleSettings.LIST, "rules.txt", "landings-a-session = 3 # enough\nstep-up = 0.05 m\n")),
                false);
        NextSession next = next(careful);

        assertThat(next.argued()).isEqualTo(Choice.STAY);
        assertThat(next.arguedOption().reasonsFor()).anyMatch(reason -> reason.contains("cap is 3"));
        assertThat(next.rules()).anyMatch(rule -> rule.isSet() && rule.value() == 0.05);
    }

    @Test
    void anEmptyBlock_hasSomethingToSayToo() {
        assertThat(next(Rules.STARTING).after()).isNull();
        assertThat(next(Rules.STARTING).higherBoxM()).isNull();
    }

    /**
     * Over blocks, diaries, limits and rules of every kind: with open pain, a sign, a limit or a diary that cannot be read, no
     * output names a higher box; one is named only on every condition at once; nothing suggests landing more.
     */
    @Test
    void aHigherBox_isNamedOnlyOnEveryCondition() throws IOException {
        SplittableRandom random = new SplittableRandom(SEED);
        int named = 0;
        int stopped = 0;
        for (int round = 0; round < 1500; round++) {
            fillAtRandom(random);
            String limit = random.nextInt(5) == 0 ? "no drops above 0.5 m" : null;
            boolean unreadable = random.nextInt(12) == 0;
            Block block = BlockAnalysis.withoutMeasures("a", List.of(), landings, Map.of());
            Standing standing = Standing.of(limit, diary, unreadable);
            Weeks weeks = Weeks.of(block, diary, 4);
            NextSession next = NextSessionFinder.of(block, null, weeks, diary, standing, Rules.STARTING);
            Outlook outlook = new Outlook(standing, weeks, next);
            StringBuilder text = new StringBuilder();
            BlockText.write(block, outlook, text);
            String all = text + BlockDocument.of(block, outlook, List.of());
            String as = "seed " + SEED + ", round " + round + ": " + text;

            assertThat(all.toLowerCase(Locale.ROOT))
                    .as(as)
                    .doesNotContain("more landings")
                    .doesNotContain("land more");
            if (standing.stops() || limit != null || unreadable) {
                assertThat(next.higherBoxM()).as(as).isNull();
                assertThat(all).as(as).doesNotContain("box is to be higher").contains("No higher box");
                assertThat(text.toString()).as(as).startsWith("! ");
            }
            if (standing.stops()) {
                stopped++;
                assertThat(next.argued()).as(as).isEqualTo(Choice.STOP);
            }
            Double box = next.higherBoxM();
            if (box != null) {
                named++;
                Double low = block.formHeight().low();
                assertThat(low).as(as).isNotNull().isGreaterThanOrEqualTo(box - 1e-9);
                assertThat(box).as(as).isLessThanOrEqualTo(highestHeld() + 0.1 + 1e-9);
                assertThat(next.argued()).as(as).isEqualTo(Choice.SAME_PLAN);
                LocalDate last = landings.get(landings.size() - 1).date().day();
                assertThat(diary.getOrDefault(last.plusDays(1), List.of()))
                        .as(as)
                        .anyMatch(entry -> !entry.soreness().isEmpty());
                assertThat(diary.tailMap(last).values())
                        .as(as)
                        .allSatisfy(entries -> assertThat(entries).noneMatch(DiaryEntry::stopsDrops));
            }
        }
        assertThat(named).as("seed %d", SEED).isGreaterThan(20);
        assertThat(stopped).isGreaterThan(100);
    }

    private double highestHeld() {
        SessionDate last = landings.get(landings.size() - 1).date();
        return landings.stream()
                .filter(landing -> landing.date().equals(last) && landing.form() == Form.HELD)
                .mapToDouble(landing -> landing.heightM() == null ? 0 : landing.heightM())
                .max()
                .orElse(0);
    }

    /** Held up to 0.75 m, lost from 0.9 m on in earlier sessions; a last session at 0.5 m that was held. */
    private void fillWell() {
        for (int day = 0; day < LAST_DAY; day += 4) {
            for (double height : new double[] {0.3, 0.5, 0.6, 0.75, 0.9, 1.05}) {
                for (int i = 0; i < 3; i++) {
                    landing(day, height, height < 0.8 ? Form.HELD : Form.LOST);
                }
            }
        }
        lastSession(0.5, Form.HELD, Form.HELD, Form.HELD, Form.HELD);
        add(LAST_DAY, entry(Map.of(), Map.of("left knee", 0), List.of()));
        add(LAST_DAY + 1, entry(Map.of("calf", 1), Map.of(), List.of()));
    }

    private void fillAtRandom(SplittableRandom random) {
        landings.clear();
        diary.clear();
        fillWell();
        if (random.nextInt(3) == 0) {
            for (int i = 0; i < 3; i++) {
                landing(LAST_DAY, 0.3 + 0.15 * random.nextInt(5), FORMS.get(random.nextInt(FORMS.size())));
            }
        }
        if (random.nextInt(3) == 0) {
            diary.remove(FIRST.plusDays(LAST_DAY + random.nextInt(2)));
        }
        String[] places = {"left knee", "right ankle", "lower back"};
        for (int i = random.nextInt(4); i > 0; i--) {
            Map<String, Integer> pain = random.nextInt(2) == 0
                    ? Map.of()
                    : Map.of(places[random.nextInt(3)], random.nextInt(3) == 0 ? 1 + random.nextInt(10) : 0);
            Map<String, Integer> soreness = random.nextInt(2) == 0 ? Map.of() : Map.of("calf", random.nextInt(7));
            List<String> signs = random.nextInt(8) == 0 ? List.of("swelling") : List.of();
            add(random.nextInt(LAST_DAY + 4), entry(soreness, pain, signs));
        }
    }

    private void lastSession(double height, Form... forms) {
        landings.removeIf(landing -> landing.date().day().equals(FIRST.plusDays(LAST_DAY)));
        for (Form form : forms) {
            landing(LAST_DAY, height, form);
        }
    }

    private void landing(int day, double height, Form form) {
        SessionDate date = new SessionDate(FIRST.plusDays(day), 0);
        landings.add(new BlockLanding(date, landings.size() + 1, Side.BOTH, height, false, form, Map.of()));
    }

    private NextSession next(Rules rules) {
        Block block = BlockAnalysis.withoutMeasures("a", List.of(), landings, Map.of());
        return NextSessionFinder.of(
                block, null, Weeks.of(block, diary, 4), diary, Standing.of(null, diary, false), rules);
    }

    private void add(int day, DiaryEntry entry) {
        diary.computeIfAbsent(FIRST.plusDays(day), key -> new ArrayList<>()).add(entry);
    }

    private static DiaryEntry entry(Map<String, Integer> soreness, Map<String, Integer> pain, List<String> signs) {
        return new DiaryEntry("then", soreness, pain, signs, null, null, Map.of(), null, null);
    }
}
