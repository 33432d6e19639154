package evenfall.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.landing.Side;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.words.Words;
import evenfall.report.film.Film;
import evenfall.report.film.FilmClock;
import evenfall.report.heed.PastPain;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.LandingNote;
import evenfall.report.session.AlikeLandings;
import evenfall.report.session.Background;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class SessionPageTest {

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 18})
    void page_isWellFormed_andEveryLandingHasOneMarkARowAndAPart(int landings) throws Exception {
        Markup page = Markup.of(page(InventedSessions.of(landings, 5)));

        for (String strip : List.of("strip-wide", "strip-narrow")) {
            Element drawn = page.all("svg").stream()
                    .filter(svg -> svg.getAttribute("id").equals(strip))
                    .findFirst()
                    .orElseThrow();
            assertThat(drawn.getElementsByTagName("a").getLength()).isEqualTo(landings);
        }
        assertThat(page.ofClass("section", "landing")).hasSize(landings);
        assertThat(page.ofClass("tr", "in")).hasSize(landings);
    }

    @Test
    void ids_areUnique_andLinksLeadToThem() throws Exception {
        Markup page = Markup.of(page(InventedSessions.of(12, 6)));
        List<String> ids = page.values("id");

        assertThat(ids).doesNotHaveDuplicates();
        assertThat(page.values("href")).isNotEmpty().allSatisfy(link -> {
            assertThat(link).startsWith("#");
            assertThat(ids).contains(link.substring(1));
        });
        assertThat(page.values("clip-path"))
                .isNotEmpty()
                .allSatisfy(clip -> assertThat(ids).contains(clip.substring("url(#".length(), clip.length() - 1)));
        assertThat(page.values("aria-labelledby"))
                .allSatisfy(id -> assertThat(ids).contains(id));
    }

    @Test
    void nothing_isAskedFromOutside() throws Exception {
        String page = page(InventedSessions.of(3, 7));
        String withoutFonts = page.replaceAll("base64,[A-Za-z0-9+/=]*", "base64,");

        assertThat(withoutFonts).doesNotContain("http:", "https:", "//", "@import");
        assertThat(Markup.of(page).values("src")).isEmpty();
        assertThat(withoutFonts).containsPattern("url\\(data:font/ttf;base64,\\)");
    }

    @Test
    void hostileText_staysText() throws Exception {
        String hostile = "<script>alert(1)</script>\"'&</title>";
        Session plain = InventedSessions.of(1, 8);
        SessionLanding landing = plain.landings().get(0);
        Session session = new Session(
                hostile,
                hostile,
                List.of(hostile),
                plain.analysis(),
                plain.filter(),
                List.of(new SessionLanding(
                        landing.landing(),
                        landing.verdict(),
                        landing.trace(),
                        new LandingNote(Side.LEFT, 0.4, hostile, hostile, hostile, hostile))),
                List.of(new DiaryEntry(
                        "2026-03-02T10:00:00Z",
                        Map.of(hostile, 3),
                        Map.of(hostile, 2),
                        List.of(hostile),
                        4.0,
                        30.0,
                        Map.of(hostile, hostile),
                        hostile,
                        hostile)));

        Markup page = Markup.of(page(session));

        assertThat(page.all("script")).hasSize(1);
        assertThat(page.all("title").get(0).getTextContent()).contains(hostile);
        assertThat(page.text()).contains("Surface: " + hostile + ".").contains("Cue in force: " + hostile + ".");
    }

    @Test
    void theWorstLanding_isNamedWithWhatWasWrong_andLedTo() throws Exception {
        SplittableRandom random = new SplittableRandom(5);
        Session session = InventedSessions.session(
                List.of(
                        InventedSessions.landing(1, 60, 0.4, Side.BOTH, 1, random),
                        InventedSessions.landing(2, 90, 0.7, Side.BOTH, 9, random)),
                List.of(),
                List.of());

        Markup page = Markup.of(page(session));

        Element worst = page.ofClass("p", "worst").get(0);
        assertThat(worst.getTextContent())
                .startsWith("Most limits passed: landing 2 from 0.70 m, ")
                .contains("trunk leaned right 9");
        assertThat(((Element) worst.getFirstChild()).getAttribute("href")).isEqualTo("#landing-2");
    }

    @Test
    void painThatIsOver_isStillToldWithItsDay() throws Exception {
        Session session = InventedSessions.of(0, 1);
        PastPain past = new PastPain(LocalDate.of(2026, 2, 1), List.of("left ankle"));

        StringBuilder text = new StringBuilder();
        SessionPage.write(session, new Background(List.of(), null, null, past, 0.75, null), text);

        assertThat(text).contains("It hurt last on 1 February 2026: left ankle.");
        assertThat(page(session)).doesNotContain("It hurt last");
    }

    /** On paper the reasons stand by each landing; the whole column, its heads too, is marked to be left out there. */
    @Test
    void theColumnOfReasons_isMarkedFromHeadToFoot() throws Exception {
        String page = page(InventedSessions.of(4, 9));

        assertThat(page.split("class=\"reasons\"", -1)).hasSize(1 + 2 + 4);
        assertThat(page.substring(page.indexOf("@media print"))).contains(".reasons { display: none; }");
    }

    @Test
    void form_isSaidToBeSilentAboutKneesFeetAndHead() throws Exception {
        assertThat(page(InventedSessions.of(0, 1)))
                .contains("Form says nothing about knees, feet or head: look at the film.")
                .contains("not a medical device");
    }

    @Test
    void pain_signsAndFalls_standFirstAmongTheCautions() throws Exception {
        SessionLanding fall = new SessionLanding(
                new Landing(2, EventKind.FALL, new Moments(null, 247, 247.1, null, null), null, null, Set.of()),
                null,
                null,
                LandingNote.NONE);
        SessionLanding landing = InventedSessions.landing(1, 60, 0.4, Side.BOTH, 2, new SplittableRandom(1));
        DiaryEntry entry = new DiaryEntry(
                "2026-03-02T10:00:00Z",
                Map.of("right calf", 3),
                Map.of("left ankle", 4, "neck", 0),
                List.of("giving-way"),
                null,
                null,
                Map.of(),
                null,
                null);
        Markup page = Markup.of(page(InventedSessions.session(List.of(landing, fall), List.of(), List.of(entry))));

        assertThat(page.ofClass("p", "urgent").stream().map(Element::getTextContent))
                .containsExactly(
                        "Warning sign entered: giving way. Stop, and see a licensed practitioner before the next drop.",
                        "Pain was entered: left ankle 4 of 10. Pain means stop: no more drops that day, and none before it is gone.",
                        "A fall at 4:07: check the athlete.");
        assertThat(page.text()).contains("Soreness: right calf 3 of 10.");
    }

    @Test
    void health_isOneLine() throws Exception {
        Finding note = new Finding(FindingCode.RATE, Severity.NOTE, "The rate is 199.8 Hz.", null, null);
        Finding warning = new Finding(FindingCode.STRAP_MOVED, Severity.WARNING, "The strap moved.", null, 12.3);

        assertThat(MethodWords.health(List.of())).isEqualTo("Recording: clean.");
        assertThat(MethodWords.health(List.of(note))).isEqualTo("Recording: clean; one note at the end of the page.");
        assertThat(MethodWords.health(List.of(warning))).isEqualTo("Recording: The strap moved.");
        assertThat(MethodWords.health(List.of(note, warning)))
                .isEqualTo("Recording: The strap moved. One more remark stands at the end of the page.");
        assertThat(MethodWords.health(List.of(note, note, warning)))
                .isEqualTo("Recording: The strap moved. 2 more remarks stand at the end of the page.");
    }

    @Test
    void leftOutLanding_isDrawnAsSuch_withItsReason() throws Exception {
        SessionLanding made = InventedSessions.landing(1, 60, 0.4, Side.LEFT, 2, new SplittableRandom(1));
        SessionLanding out = new SessionLanding(
                made.landing(),
                made.verdict(),
                made.trace(),
                new LandingNote(Side.LEFT, 0.4, null, null, "slipped", null));
        Markup page = Markup.of(page(InventedSessions.session(List.of(out), List.of(), List.of())));

        assertThat(page.ofClass("a", "left-out")).hasSize(2); // once wide, once narrow
        assertThat(page.ofClass("tr", "out")).hasSize(1);
        assertThat(page.text()).contains("Left out: slipped.");
    }

    @Test
    void missingTrace_andMissingMeasures_leaveAPageThatSaysSo() throws Exception {
        SessionLanding made = InventedSessions.landing(1, 60, 0.4, null, 2, new SplittableRandom(1));
        SessionLanding bare = new SessionLanding(
                new Landing(1, EventKind.LANDING, made.landing().moments(), null, null, Set.of()),
                null,
                null,
                LandingNote.NONE);
        Markup page = Markup.of(page(InventedSessions.session(List.of(bare), List.of(), List.of())));

        assertThat(page.text()).contains("height not known", "foot not known", "No question could be judged.");
    }

    /** The lean is beyond its limit in the table and by the landing; the question it belongs to has failed. */
    @Test
    void whatIsBeyondItsLimit_isMarkedInWords_andEachQuestionIsAnswered() throws Exception {
        SessionLanding made = InventedSessions.landing(1, 60, 0.4, Side.BOTH, 14, new SplittableRandom(1));
        Markup page = Markup.of(page(InventedSessions.session(List.of(made), List.of(), List.of())));

        assertThat(page.all("strong").stream().map(Element::getTextContent).filter(words -> words.endsWith("(over)")))
                .hasSize(2)
                .allSatisfy(words -> assertThat(words).startsWith("right 14°"));
        assertThat(page.ofClass("span", "answer").stream().map(Element::getTextContent))
                .hasSize(5)
                .element(1)
                .isEqualTo("failed");
        SessionLanding bare = new SessionLanding(
                new Landing(1, EventKind.LANDING, made.landing().moments(), null, null, Set.of()),
                null,
                null,
                LandingNote.NONE);
        assertThat(Markup.of(page(InventedSessions.session(List.of(bare), List.of(), List.of())))
                        .ofClass("span", "answer")
                        .stream()
                        .map(Element::getTextContent))
                .startsWith("cannot be judged", "cannot be judged", "cannot be judged", "cannot be judged");
    }

    @ParameterizedTest
    @EnumSource(LandingFlag.class)
    void everyFlag_hasWords(LandingFlag flag) {
        assertThat(Words.beside(SessionPage.class).knows("flag." + flag.code())).isTrue();
    }

    @Test
    void aFilmThatWasNoted_isOfferedWithItsClock() throws Exception {
        Film film = new Film("/films/drops of may.mp4", new FilmClock(12.34, 50));
        StringBuilder text = new StringBuilder();
        SessionPage.write(
                InventedSessions.of(2, 5), new Background(List.of(), film, "note --log LOG", null, 0.75, null), text);
        Element part = Markup.of(text.toString()).ofClass("section", "film").get(0);

        assertThat(part.getAttribute("data-name")).isEqualTo("drops of may.mp4");
        assertThat(part.getAttribute("data-address")).startsWith("file:///").endsWith("films/drops%20of%20may.mp4");
        assertThat(part.getAttribute("data-starts")).isEqualTo("12.340");
        assertThat(part.getAttribute("data-drift")).isEqualTo("50.0");
        assertThat(part.getAttribute("data-command")).isEqualTo("note --log LOG");
        assertThat(part.getTextContent()).contains("Open drops of may.mp4");
    }

    @Test
    void whatIsUsual_standsBesideAFigure_onceTwelveAlikeAreKnown() throws Exception {
        SplittableRandom random = new SplittableRandom(2);
        List<SessionLanding> alike = new ArrayList<>();
        for (int i = 1; i <= AlikeLandings.FEWEST; i++) {
            alike.add(InventedSessions.landing(i, 60.0 + 20 * i, 0.4, Side.LEFT, -i, random));
        }
        SessionLanding now = InventedSessions.landing(1, 60, 0.4, Side.LEFT, 2, random);
        SessionLanding other = InventedSessions.landing(2, 90, 0.4, Side.RIGHT, 2, random);
        Session session = InventedSessions.session(List.of(now, other), List.of(), List.of());

        // Leans of 1 to 12 degrees to the left: quartiles 3.75 and 9.25 (Hyndman and Fan's seventh definition).
        assertThat(usual(session, alike)).containsExactly("limit 6° usually left 9.3° to left 3.8°");
        assertThat(usual(session, alike.subList(1, alike.size()))).isEmpty();
    }

    private static List<String> usual(Session session, List<SessionLanding> before) throws Exception {
        StringBuilder text = new StringBuilder();
        Session earlier = InventedSessions.session(before, List.of(), List.of());
        SessionPage.write(session, new Background(List.of(earlier), null, null, null, 0.75, null), text);
        return Markup.of(text.toString()).ofClass("dd", "usual").stream()
                .map(Element::getTextContent)
                .filter(words -> words.contains("left") && words.contains("3.8"))
                .toList();
    }

    @Test
    void pain_isToldWhateverWasEntered() {
        assertThat(DiaryWords.pain(List.of())).isEqualTo("Pain: nobody was asked. Ask before the first drop.");
        assertThat(DiaryWords.pain(List.of(pain(Map.of("neck", 0)))))
                .isEqualTo("Nothing hurt where pain was asked for.");
        assertThat(DiaryWords.pain(List.of(pain(Map.of("neck", 1)), pain(Map.of("left ankle", 4, "neck", 0)))))
                .isEqualTo("Pain: left ankle 4 of 10, neck 1 of 10.");
    }

    private static DiaryEntry pain(Map<String, Integer> pain) {
        return new DiaryEntry("2026-03-02T10:00:00Z", Map.of(), pain, List.of(), null, null, Map.of(), null, null);
    }

    @Test
    void samePage_twice_isTheSameBytes() throws Exception {
        assertThat(page(InventedSessions.of(4, 9))).isEqualTo(page(InventedSessions.of(4, 9)));
    }

    @Test
    void sixtyLandings_stayUnderThreeMegabytes() throws Exception {
        assertThat(page(InventedSessions.of(60, 10)).length()).isLessThan(3_000_000);
    }

    private static String page(Session session) throws IOException {
        StringBuilder page = new StringBuilder();
        SessionPage.write(session, Background.NONE, page);
        return page.toString();
    }
}
