package evenfall.report.heed;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.log.DiaryEntry;
import evenfall.report.round.BodyPart;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandingTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
    private static final long SEED = 11;

    private final SortedMap<LocalDate, List<DiaryEntry>> diary = new TreeMap<>();

    @ParameterizedTest
    @CsvSource({
        "left-knee, left knee",
        "Left Knee, left knee",
        "knee_l, left knee",
        "R knee, right knee",
        "knees, knee",
        "calves, calf",
        "both thighs, thigh",
        "quads, thigh front",
        "left thigh-back, left hamstring",
        "low back, lower back",
        "Left  feet, left foot",
        "inner knee, inner knee",
        "left head, left head"
    })
    void spellings_meanOnePlace(String written, String key) {
        assertThat(BodyRegion.key(written)).isEqualTo(key);
    }

    @Test
    void pain_isOpenUntilThatPlaceIsNotedAs0() {
        pain(0, "left-knee", 1);
        pain(1, "right knee", 0);
        pain(2, "left ankle", 0);
        assertThat(standing().pain()).containsExactly(new OpenPain("left knee", 1, FIRST, FIRST));
        assertThat(standing().sentences().get(0)).contains("left knee").contains("No drops");

        pain(3, "left knee", 3);
        assertThat(standing().pain()).containsExactly(new OpenPain("left knee", 3, FIRST, FIRST.plusDays(3)));
        pain(4, "Left Knee", 0);
        assertThat(standing().stops()).isFalse();
    }

    @Test
    void theLastDayThatHurt_isFoundBeforeADay_andNotOnIt() {
        pain(0, "left knee", 1);
        pain(3, "left ankle", 4);
        pain(5, "left ankle", 0);
        pain(7, "right knee", 2);

        assertThat(PastPain.before(FIRST.plusDays(7), diary))
                .isEqualTo(new PastPain(FIRST.plusDays(3), List.of("left ankle")));
        assertThat(PastPain.before(FIRST.plusDays(3), diary)).isEqualTo(new PastPain(FIRST, List.of("left knee")));
        assertThat(PastPain.before(FIRST, diary)).isNull();
    }

    /** The same judge says which days were free of pain: a baseline of what is usual is taken from no other. */
    @Test
    void aDayHurt_ifPainWasNotedOrStillOpen() {
        pain(0, "left-knee", 1);
        pain(2, "left knee", 0);
        pain(3, "Left Knee", 2);
        pain(3, "left knee", 0);
        pain(5, "knee", 4);
        pain(7, "whole body", 0);

        boolean[] hurt = {true, true, false, true, false, true, true, false, false};
        for (int day = 0; day < hurt.length; day++) {
            assertThat(Standing.hurtOn(FIRST.plusDays(day), diary))
                    .as("day " + day)
                    .isEqualTo(hurt[day]);
        }
        assertThat(Standing.hurtOn(FIRST.minusDays(1), diary)).isFalse();
    }

    @Test
    void painWithoutASide_isOverWhenBothAre() {
        pain(0, "knee", 2);
        pain(1, "left knee", 0);
        assertThat(standing().stops()).isTrue();
        pain(2, "right knee", 0);
        assertThat(standing().stops()).isFalse();

        pain(3, "left knee", 2);
        pain(4, "knee", 0);
        assertThat(standing().stops()).isFalse();
    }

    @Test
    void nothingAnywhere_isTheEndOfAllPain() {
        pain(0, "left knee", 2);
        pain(0, "inner knee", 2);
        pain(1, "whole body", 0);
        assertThat(standing().stops()).isFalse();

        pain(2, "whole body", 1);
        pain(3, "left knee", 0);
        assertThat(standing().stops()).isTrue();
    }

    /** What the window offers are places the diary compares by the same name. */
    @Test
    void thePlacesOfTheWindow_areKnown() {
        for (String paired : BodyPart.PAIRED) {
            assertThat(BodyRegion.key(BodyPart.left(paired).code())).isEqualTo("left " + paired);
            assertThat(BodyRegion.named(BodyPart.right(paired).code())).isPresent();
        }
        assertThat(BodyPart.SINGLE).allMatch(part -> BodyRegion.SINGLE.contains(part.code()));
        assertThat(BodyPart.WHOLE).isEqualTo(BodyRegion.WHOLE);
    }

    @Test
    void aPlaceNobodyKnows_isNotLost() {
        pain(0, "Inner knee", 2);
        assertThat(standing().pain()).extracting(OpenPain::region).containsExactly("inner knee");
        pain(1, "inner knee", 0);
        assertThat(standing().stops()).isFalse();
    }

    @Test
    void aSign_isOverWithThePainItCameWith_orWhenItIsSaid() {
        add(0, entry(Map.of("left ankle", 4), List.of("swelling")));
        assertThat(standing().signs()).containsExactly(new OpenSign("swelling", FIRST));
        pain(5, "left ankle", 0);
        assertThat(standing().stops()).isFalse();

        add(6, entry(Map.of(), List.of("locking")));
        pain(7, "left ankle", 0);
        assertThat(standing().stops()).isTrue();
        add(8, entry(Map.of(), List.of("none")));
        assertThat(standing().stops()).isFalse();
    }

    @Test
    void aKnockToTheHead_isNotOverByItself() {
        add(0, entry(Map.of("head", 2), List.of("head-impact")));
        pain(1, "head", 0);
        assertThat(standing().signs()).containsExactly(new OpenSign("head-impact", FIRST));
    }

    @Test
    void aLimit_standsFirst_beforePain() {
        pain(0, "left knee", 1);
        Standing standing = Standing.of("no drops above 0.5 m", diary, true);

        assertThat(standing.sentences().get(0)).contains("no drops above 0.5 m").contains("above everything");
        assertThat(standing.sentences()).hasSize(3);
    }

    @Test
    void painThatIsOverTheSameDay_stillEndedItsDrops() {
        add(0, entry(Map.of("left knee", 2), List.of()));
        add(0, entry(Map.of("left knee", 0), List.of()));

        assertThat(standing().stops()).isFalse();
        assertThat(Standing.endedOn(FIRST, diary.getOrDefault(FIRST, List.of())))
                .hasSize(1);
    }

    /** By brute force: a place hurts as long as the last number noted of it is above 0. */
    @Test
    void whateverIsNoted_thePlaceHurtsByItsLastNumber() {
        String[] places = {"left knee", "right knee", "lower back", "left ankle"};
        SplittableRandom random = new SplittableRandom(SEED);
        for (int round = 0; round < 300; round++) {
            diary.clear();
            int[] last = new int[places.length];
            for (int i = 0; i < 12; i++) {
                int place = random.nextInt(places.length);
                last[place] = random.nextInt(3) == 0 ? 0 : random.nextInt(11);
                pain(i / 2, places[place], last[place]);
            }
            List<String> hurting = new ArrayList<>();
            for (int p = 0; p < places.length; p++) {
                if (last[p] > 0) {
                    hurting.add(places[p] + " " + last[p]);
                }
            }
            assertThat(standing().pain())
                    .as("seed %d, round %d", SEED, round)
                    .extracting(open -> open.region() + " " + open.size())
                    .containsExactlyInAnyOrderElementsOf(hurting);
        }
    }

    private Standing standing() {
        return Standing.of(null, diary, false);
    }

    private void pain(int day, String region, int size) {
        add(day, entry(Map.of(region, size), List.of()));
    }

    private void add(int day, DiaryEntry entry) {
        diary.computeIfAbsent(FIRST.plusDays(day), key -> new ArrayList<>()).add(entry);
    }

    private static DiaryEntry entry(Map<String, Integer> pain, List<String> signs) {
        return new DiaryEntry("then", Map.of(), pain, signs, null, null, Map.of(), null, null);
    }
}
