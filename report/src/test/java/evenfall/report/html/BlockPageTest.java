package evenfall.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.place.Place;
import evenfall.report.block.Block;
import evenfall.report.block.StrapPlace;
import evenfall.report.html.view.Span;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class BlockPageTest {

    @Test
    void page_isWellFormed_selfContained_andItsIdsAreUnique() throws Exception {
        String page = page(InventedBlocks.block(5), InventedBlocks.diary("land quietly"));
        Markup markup = Markup.of(page);

        assertThat(markup.values("id")).doesNotHaveDuplicates();
        assertThat(markup.values("src")).isEmpty();
        assertThat(markup.values("href"))
                .isNotEmpty()
                .allSatisfy(link -> assertThat(markup.values("id")).contains(link.substring(1)));
        assertThat(page.replaceAll("base64,[A-Za-z0-9+/=]*", "")).doesNotContain("http:", "https:", "//");
    }

    @Test
    void sentence_countsSessionsWeeksLandingsAndForm() throws Exception {
        assertThat(sentence(InventedBlocks.block(3), new TreeMap<>()))
                .isEqualTo("3 sessions in 2 weeks, 18 landings from 0.4 to 1.2 m. Form held in 9."
                        + " Form height over all 3 sessions 0.80 m (0.68 to 0.92, 95 %).");
        assertThat(sentence(InventedBlocks.block(1), new TreeMap<>()))
                .isEqualTo("1 session in 1 week, 6 landings from 0.4 to 1.2 m. Form held in 3.");
        assertThat(sentence(InventedBlocks.block(0), new TreeMap<>())).isEqualTo("There is no session in this block.");
    }

    @Test
    void pain_isSaid_andItsAbsenceToo() throws Exception {
        SortedMap<LocalDate, List<DiaryEntry>> diary = InventedBlocks.diary(null);

        assertThat(sentence(InventedBlocks.block(2), diary)).endsWith("No pain was entered.");
        diary.put(InventedBlocks.FIRST.plusDays(4), List.of(InventedBlocks.pain(3), InventedBlocks.pain(4)));

        assertThat(sentence(InventedBlocks.block(2), diary))
                .endsWith("Pain was entered on 1 day, 7 March 2026: left ankle.");
        assertThat(Markup.of(page(InventedBlocks.block(2), diary)).ofClass("p", "urgent").stream()
                        .map(Element::getTextContent))
                .contains(
                        "Pain was entered: left ankle 3 of 10. Pain means stop: no more drops that day, and none before it is gone.");
    }

    @Test
    void painOfAnEarlierDay_isNoCautionOfToday() throws Exception {
        SortedMap<LocalDate, List<DiaryEntry>> diary = InventedBlocks.diary(null);
        diary.put(InventedBlocks.FIRST, List.of(InventedBlocks.pain(3)));

        assertThat(Markup.of(page(InventedBlocks.block(2), diary)).ofClass("p", "urgent"))
                .isEmpty();
    }

    /** What stops stands before all else; the rules stand apart from the reasons and are written as they must be typed. */
    @Test
    void whatStops_standsFirst_thenTheSentence_thenTheDecision_andItsRulesFolded() throws Exception {
        SortedMap<LocalDate, List<DiaryEntry>> diary = InventedBlocks.diary(null);
        diary.put(InventedBlocks.FIRST.plusDays(4), List.of(InventedBlocks.pain(4)));
        Block block = InventedBlocks.block(2);
        StringBuilder out = new StringBuilder();
        BlockPage.write(block, diary, InventedBlocks.outlook(block, diary), out);
        String page = out.substring(out.indexOf("<main>"));

        assertThat(page)
                .containsSubsequence(
                        "class=\"urgent\"",
                        "class=\"sentence\"",
                        "class=\"standing\"",
                        "id=\"next\"",
                        "<details class=\"rules\">",
                        "<li>landings-a-session = ",
                        "</details>",
                        "Left against right");
        assertThat(page.substring(page.indexOf("id=\"next\""), page.indexOf("<details")))
                .doesNotContain("lost-in-a-row =");
    }

    @Test
    void aDiaryThatSaysNothing_hasNoChart() throws Exception {
        assertThat(page(InventedBlocks.block(2), new TreeMap<>())).doesNotContain("diary-wide");
        assertThat(page(InventedBlocks.block(2), InventedBlocks.diary("quiet")))
                .contains("calf-right: soreness up to 3", "quiet</text>");
    }

    @Test
    void hostileCue_staysText() throws Exception {
        String hostile = "<script>alert(1)</script>\"'&";
        Markup page = Markup.of(page(InventedBlocks.block(2), InventedBlocks.diary(hostile)));

        assertThat(page.all("script")).hasSize(1);
        assertThat(page.all("text").stream().map(Element::getTextContent)).contains(hostile);
    }

    @Test
    void everyHeight_hasARow_withHeldOfLanded() throws Exception {
        Markup page = Markup.of(page(InventedBlocks.block(2), new TreeMap<>()));

        assertThat(page.text()).contains("0.4 m", "1.2 m", "2 of 2", "0 of 2");
    }

    /** A line that ended between a number and its unit would be read wrongly. */
    @Test
    void numbers_stayWithTheirUnits() throws IOException {
        assertThat(page(InventedBlocks.block(3), new TreeMap<>()))
                .contains("to 1.2\u00a0m.", ", 95\u00a0%)")
                .doesNotContainPattern(">[^<]*\\d (m|cm|g|%)[^a-z<]*<");
    }

    /** A strap that sat elsewhere moves angles as a change of the athlete would: the page says on which day. */
    @Test
    void aStrapThatSatElsewhere_isSaidWithItsDay() throws Exception {
        Block block = InventedBlocks.block(
                3,
                6,
                Map.of(
                        new SessionDate(InventedBlocks.FIRST.plusDays(4), 0),
                        List.of(new StrapPlace(Place.UPPER_BACK, 11.4, 2.6))));

        assertThat(Markup.of(page(block, new TreeMap<>())).text())
                .contains(
                        "On 7 March 2026 the upper back sensor sat 11° otherwise than in most sessions (most 3°): what changed there may be the strap.");
        assertThat(page(InventedBlocks.block(3), new TreeMap<>())).doesNotContain("sat 11°");
    }

    /** Most sessions right of zero and falling is less to the right, even if one lies a hair to the left. */
    @Test
    void aMeasure_liesOnASide_whereNearlyAllSessionsDo() {
        assertThat(BlockChanges.sideOfZero(new double[] {2, 1, 3, 2, 2, 1, 1, 1, -0.1, 1}))
                .isEqualTo(1);
        assertThat(BlockChanges.sideOfZero(new double[] {-2, -1, -3, -2})).isEqualTo(-1);
        assertThat(BlockChanges.sideOfZero(new double[] {2, 1, -1, 2, -2})).isZero();
        assertThat(BlockChanges.sideOfZero(new double[0])).isZero();
    }

    /** Every measure that is named leads to what it is, and the sentence stays the same. */
    @Test
    void namesOfMeasures_leadToTheirExplanation() {
        String sentence =
                "No clear change in trunk leaned, pelvis sank, pelvis before or behind the feet, pelvis tilted.";
        List<Span> spans = TermLinks.in(sentence);

        assertThat(spans.stream().map(Span::words).collect(Collectors.joining()))
                .isEqualTo(sentence);
        assertThat(spans.stream().filter(span -> !span.about().isEmpty()).map(Span::words))
                .containsExactly("trunk leaned", "pelvis sank", "pelvis before or behind the feet", "pelvis tilted");
        assertThat(TermLinks.in("Nothing here.")).containsExactly(new Span("Nothing here.", ""));
        assertThat(TermLinks.in("")).isEmpty();
    }

    @Test
    void samePage_twice_isTheSameBytes() throws Exception {
        assertThat(page(InventedBlocks.block(4), InventedBlocks.diary("a")))
                .isEqualTo(page(InventedBlocks.block(4), InventedBlocks.diary("a")));
    }

    private static String sentence(Block block, SortedMap<LocalDate, List<DiaryEntry>> diary) throws Exception {
        return Markup.of(page(block, diary)).ofClass("p", "sentence").get(0).getTextContent();
    }

    private static String page(Block block, SortedMap<LocalDate, List<DiaryEntry>> diary) throws IOException {
        StringBuilder page = new StringBuilder();
        BlockPage.write(block, diary, page);
        return page.toString();
    }
}
